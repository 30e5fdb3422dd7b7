package benchlore.generator.drawing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Many small things in a row or a field. What is too fine to be seen at the drawing's scale is
 * drawn coarser, so that it still reads as what it is.
 */
final class Patterns {
  private static final double FINEST_TEETH = 2.6;
  private static final double FINEST_THREAD = 2.4;
  private static final double FINEST_HATCH = 2.6;
  private static final double FINEST_DOTS = 3.4;

  private Patterns() {}

  /**
   * Saw teeth on the right of a line.
   *
   * @param along the line through the gullets
   * @param pitch from point to point
   * @param depth of the gullets
   * @param lean where the points lean: 1 to the line's end, -1 to its start, 0 to neither
   */
  record Teeth(List<Point> along, double pitch, double depth, double lean) {
    Shape.Ink ink(double scale) {
      Point a = along.get(0);
      Point b = along.get(1);
      Point way = Outlines.direction(a, b);
      double coarser = Math.max(1, FINEST_TEETH / (pitch * scale));
      int count = Math.max(1, (int) Math.round(a.distance(b) / (pitch * coarser)));
      double step = a.distance(b) / count;
      double deep = depth * coarser;
      Tracer zigzag = new Tracer(a);
      for (int i = 0; i < count; i++) {
        double tip = (i + 0.5 + lean / 2) * step;
        zigzag.line(off(a, way, tip, deep));
        zigzag.line(off(a, way, (i + 1) * step, 0));
      }
      Trace points = zigzag.open();
      // A little of the blade is painted over, so that no line shows between it and the teeth.
      double over = -1 / scale;
      Tracer strip = new Tracer(off(a, way, 0, over));
      strip.line(a);
      points.pieces().forEach(piece -> strip.line(piece.to()));
      strip.line(off(b, way, 0, over));
      return new Shape.Ink(List.of(strip.closed()), List.of(points));
    }
  }

  /** A point so far along and to the right of a line. */
  private static Point off(Point a, Point way, double along, double right) {
    return new Point(
        a.x() + way.x() * along + way.z() * right, a.z() + way.z() * along - way.x() * right);
  }

  /** A threaded rod. */
  static Shape.Ink thread(List<Point> along, double diameter, double pitch, double scale) {
    Point a = along.get(0);
    Point b = along.get(1);
    Point way = Outlines.direction(a, b);
    double half = diameter / 2;
    double length = a.distance(b);
    double step = Math.max(pitch, FINEST_THREAD / scale);
    List<Trace> turns = new ArrayList<>();
    for (double at = step / 2; at + step / 2 <= length; at += step) {
      turns.add(
          new Tracer(off(a, way, at - step / 4, half))
              .line(off(a, way, at + step / 4, -half))
              .open());
    }
    Trace rod =
        new Tracer(off(a, way, 0, half))
            .line(off(a, way, length, half))
            .line(off(a, way, length, -half))
            .line(off(a, way, 0, -half))
            .closed();
    return new Shape.Ink(List.of(rod), turns);
  }

  /** Parallel lines in a field; with {@code cross} mirrored ones too. */
  record Hatch(List<Point> inside, double pitch, double angle, boolean cross) {
    Shape.Ink ink(double scale) {
      double step = Math.max(pitch, FINEST_HATCH / scale);
      List<Trace> lines = new ArrayList<>(lines(inside, step, angle));
      if (cross) {
        lines.addAll(lines(inside, step, -angle));
      }
      return new Shape.Ink(List.of(), lines);
    }
  }

  private static List<Trace> lines(List<Point> field, double step, double angle) {
    Affine level = Affine.turn(-angle, new Point(0, 0));
    Affine back = Affine.turn(angle, new Point(0, 0));
    List<Point> turned = field.stream().map(level::of).toList();
    double low = turned.stream().mapToDouble(Point::z).min().orElse(0);
    double high = turned.stream().mapToDouble(Point::z).max().orElse(0);
    List<Trace> lines = new ArrayList<>();
    for (double z = low + step / 2; z < high; z += step) {
      List<Double> hits = crossings(turned, z);
      for (int i = 0; i + 1 < hits.size(); i += 2) {
        Point from = back.of(new Point(hits.get(i), z));
        lines.add(new Tracer(from).line(back.of(new Point(hits.get(i + 1), z))).open());
      }
    }
    return lines;
  }

  private static List<Double> crossings(List<Point> field, double z) {
    List<Double> hits = new ArrayList<>();
    for (int i = 0; i < field.size(); i++) {
      Point a = field.get(i);
      Point b = field.get((i + 1) % field.size());
      if (a.z() < z != b.z() < z) {
        hits.add(a.x() + (b.x() - a.x()) * (z - a.z()) / (b.z() - a.z()));
      }
    }
    Collections.sort(hits);
    return hits;
  }

  /** Rows of dots in a field, each row half a step on. */
  static Shape.Ink dots(List<Point> inside, double pitch, double radius, double scale) {
    double coarser = Math.max(1, FINEST_DOTS / (pitch * scale));
    double step = pitch * coarser;
    double size = radius * coarser;
    List<Trace> dots = new ArrayList<>();
    int row = 0;
    for (Trace line : lines(inside, step * 0.87, 0)) {
      double shift = row++ % 2 == 0 ? step * 0.3 : step * 0.8;
      double end = line.pieces().get(0).to().x();
      for (double x = line.from().x() + shift; x < end - size; x += step) {
        dots.add(Shape.round(new Point(x, line.from().z()), new Point(size, size)));
      }
    }
    return new Shape.Ink(dots, List.of());
  }
}
