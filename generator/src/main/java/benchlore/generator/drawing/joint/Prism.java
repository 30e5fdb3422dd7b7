package benchlore.generator.drawing.joint;

import benchlore.generator.drawing.svg.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A piece of wood with one shape all along.
 *
 * @param near corners of its near end, anticlockwise seen from outside
 * @param back from the near end to the far one
 * @param grain which way its fibres run
 */
record Prism(List<Space> near, Space back, Grain grain) {
  private static final double LEVEL = 1e-9;

  Prism {
    near = List.copyOf(near);
  }

  /** A block between two corners. */
  static Prism block(Space low, Space high, Grain grain) {
    return front(
        grain,
        low.y(),
        high.y(),
        new Point(low.x(), low.z()),
        new Point(high.x(), low.z()),
        new Point(high.x(), high.z()),
        new Point(low.x(), high.z()));
  }

  /** A shape seen from the front, {@code x} and {@code z}, anticlockwise; between two depths. */
  static Prism front(Grain grain, double y0, double y1, Point... shape) {
    List<Space> near = new ArrayList<>();
    for (Point p : shape) {
      near.add(new Space(p.x(), y0, p.z()));
    }
    return new Prism(near, new Space(0, y1 - y0, 0), grain);
  }

  /** A shape seen from the right, {@code x} as depth, anticlockwise; from x1 back to x0. */
  static Prism side(Grain grain, double x0, double x1, Point... shape) {
    List<Space> near = new ArrayList<>();
    for (Point p : shape) {
      near.add(new Space(x1, p.x(), p.z()));
    }
    return new Prism(near, new Space(x0 - x1, 0, 0), grain);
  }

  /** A shape seen from above, {@code z} as depth, anticlockwise; from z1 down to z0. */
  static Prism top(Grain grain, double z0, double z1, Point... shape) {
    List<Space> near = new ArrayList<>();
    for (Point p : shape) {
      near.add(new Space(p.x(), p.z(), z1));
    }
    return new Prism(near, new Space(0, 0, z0 - z1), grain);
  }

  /** The faces turned towards you, what lies behind first. */
  List<Face> faces() {
    List<Face> sides = new ArrayList<>();
    for (int i = 0; i < near.size(); i++) {
      Space a = near.get(i);
      Space b = near.get((i + 1) % near.size());
      Face side = new Face(List.of(b, a, a.plus(back), b.plus(back)), ends(a, b), look(a, b));
      if (side.faces()) {
        sides.add(side);
      }
    }
    Point away = back.seen();
    sides.sort(
        Comparator.comparingDouble(f -> f.middle().x() * away.x() + f.middle().z() * away.z()));
    sides.add(new Face(near, across(back), nearLook()));
    return sides;
  }

  /** Whether the fibres end in the side that runs from a to b and back. */
  private boolean ends(Space a, Space b) {
    Space along = grain.along();
    double edge = dot(along, b.plus(a.times(-1)));
    return grain != Grain.NONE && Math.abs(edge) < LEVEL && Math.abs(dot(along, back)) < LEVEL;
  }

  private boolean across(Space direction) {
    return Math.abs(dot(grain.along(), direction)) > LEVEL;
  }

  private static double dot(Space a, Space b) {
    return a.x() * b.x() + a.y() * b.y() + a.z() * b.z();
  }

  private Face.Look nearLook() {
    if (Math.abs(back.y()) > LEVEL) {
      return Face.Look.FRONT;
    }
    return Math.abs(back.x()) > LEVEL ? Face.Look.SIDE : Face.Look.TOP;
  }

  /** A side's normal is across both its edges: what it has most of decides the light. */
  private Face.Look look(Space a, Space b) {
    Space e = b.plus(a.times(-1));
    double nx = Math.abs(e.y() * back.z() - e.z() * back.y());
    double ny = Math.abs(e.z() * back.x() - e.x() * back.z());
    double nz = Math.abs(e.x() * back.y() - e.y() * back.x());
    if (nz >= nx && nz >= ny) {
      return Face.Look.TOP;
    }
    return nx >= ny ? Face.Look.SIDE : Face.Look.FRONT;
  }
}
