package benchlore.generator.drawing;

import java.util.ArrayList;
import java.util.List;

/** The smallest upright rectangle round an outline. */
record Box(double x0, double z0, double x1, double z1) {
  static Box of(Outline outline) {
    double x0 = Double.POSITIVE_INFINITY;
    double z0 = Double.POSITIVE_INFINITY;
    double x1 = Double.NEGATIVE_INFINITY;
    double z1 = Double.NEGATIVE_INFINITY;
    for (Segment segment : outline.segments()) {
      for (Point p : extremes(segment)) {
        x0 = Math.min(x0, p.x());
        z0 = Math.min(z0, p.z());
        x1 = Math.max(x1, p.x());
        z1 = Math.max(z1, p.z());
      }
    }
    return new Box(x0, z0, x1, z1);
  }

  private static List<Point> extremes(Segment segment) {
    List<Point> points = new ArrayList<>(List.of(segment.from(), segment.to()));
    if (segment instanceof Arc arc) {
      for (int quarter = -8; quarter <= 8; quarter++) {
        double t = (quarter * Math.PI / 2 - arc.start()) / arc.sweep();
        if (t > 0 && t < 1) {
          points.add(arc.at(t));
        }
      }
    }
    return points;
  }

  double wide() {
    return x1 - x0;
  }

  double high() {
    return z1 - z0;
  }

  Point middle() {
    return new Point((x0 + x1) / 2, (z0 + z1) / 2);
  }

  Box with(Point p) {
    return new Box(
        Math.min(x0, p.x()), Math.min(z0, p.z()), Math.max(x1, p.x()), Math.max(z1, p.z()));
  }

  Box with(Box other) {
    return with(new Point(other.x0, other.z0)).with(new Point(other.x1, other.z1));
  }
}
