package benchlore.generator.drawing.bit;

import benchlore.generator.drawing.svg.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * A piece of a circle.
 *
 * @param start angle of the first point seen from the centre, radians, anticlockwise from +x
 * @param sweep signed angle to the last point, anticlockwise positive, at most a full turn
 */
record Arc(Point centre, double radius, double start, double sweep) implements Segment {
  /** The arc from one point to another round a centre; {@code up} anticlockwise. */
  static Arc of(Point from, Point to, Point centre, boolean anticlockwise) {
    double a = Math.atan2(from.z() - centre.z(), from.x() - centre.x());
    double b = Math.atan2(to.z() - centre.z(), to.x() - centre.x());
    double turn = b - a;
    if (anticlockwise && turn < 0) {
      turn += 2 * Math.PI;
    } else if (!anticlockwise && turn > 0) {
      turn -= 2 * Math.PI;
    }
    return new Arc(centre, from.distance(centre), a, turn);
  }

  @Override
  public Point from() {
    return at(0);
  }

  @Override
  public Point to() {
    return at(1);
  }

  @Override
  public Point at(double t) {
    double angle = start + t * sweep;
    return new Point(centre.x() + radius * Math.cos(angle), centre.z() + radius * Math.sin(angle));
  }

  @Override
  public Segment part(double t0, double t1) {
    return new Arc(centre, radius, start + t0 * sweep, (t1 - t0) * sweep);
  }

  @Override
  public Segment reversed() {
    return new Arc(centre, radius, start + sweep, -sweep);
  }

  @Override
  public Segment mirrored() {
    return new Arc(centre.mirrored(), radius, Math.PI - start, -sweep);
  }

  @Override
  public List<Double> meetsX(double x) {
    double cos = (x - centre.x()) / radius;
    if (Math.abs(cos) > 1) {
      return List.of();
    }
    return parameters(Math.acos(cos), -Math.acos(cos));
  }

  @Override
  public List<Double> meetsZ(double z) {
    double sin = (z - centre.z()) / radius;
    if (Math.abs(sin) > 1) {
      return List.of();
    }
    return parameters(Math.asin(sin), Math.PI - Math.asin(sin));
  }

  private List<Double> parameters(double... angles) {
    List<Double> found = new ArrayList<>();
    for (double angle : angles) {
      for (int turn = -2; turn <= 2; turn++) {
        found.add((angle + turn * 2 * Math.PI - start) / sweep);
      }
    }
    return found;
  }

  @Override
  public double areaShare() {
    double chord = new Line(from(), to()).areaShare();
    return chord + radius * radius * (sweep - Math.sin(sweep)) / 2;
  }
}
