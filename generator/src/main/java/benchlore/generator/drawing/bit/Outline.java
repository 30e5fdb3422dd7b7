package benchlore.generator.drawing.bit;

import benchlore.generator.drawing.svg.Box;
import benchlore.generator.drawing.svg.Point;
import java.util.ArrayList;
import java.util.List;

/** A run of segments, each starting where the one before ends. */
record Outline(List<Segment> segments) {
  private static final double TOUCH = 1e-6;

  Outline {
    segments = List.copyOf(segments);
  }

  static Outline rectangle(double x0, double z0, double x1, double z1) {
    return Pen.at(x0, z0).lineTo(x1, z0).lineTo(x1, z1).lineTo(x0, z1).lineTo(x0, z0).outline();
  }

  Point from() {
    return segments.get(0).from();
  }

  Point to() {
    return segments.get(segments.size() - 1).to();
  }

  boolean isClosed() {
    return from().distance(to()) < TOUCH;
  }

  /**
   * The enclosed area, square millimetres; the gap of an open outline counts as a straight line.
   */
  double area() {
    double sum = new Line(to(), from()).areaShare();
    for (Segment segment : segments) {
      sum += segment.areaShare();
    }
    return Math.abs(sum);
  }

  double maxX() {
    return box().x1();
  }

  Outline reversed() {
    List<Segment> back = new ArrayList<>();
    for (Segment segment : segments) {
      back.add(0, segment.reversed());
    }
    return new Outline(back);
  }

  Outline mirrored() {
    return new Outline(segments.stream().map(Segment::mirrored).toList());
  }

  /** This outline, a straight line if there is a gap, then the other. */
  Outline then(Outline other) {
    List<Segment> all = new ArrayList<>(segments);
    if (to().distance(other.from()) > TOUCH) {
      all.add(new Line(to(), other.from()));
    }
    all.addAll(other.segments);
    return new Outline(all);
  }

  Outline thenLineTo(double x, double z) {
    Point next = new Point(x, z);
    return to().distance(next) < TOUCH ? this : then(new Outline(List.of(new Line(to(), next))));
  }

  Outline closed() {
    return thenLineTo(from().x(), from().z());
  }

  /** What lies at {@code z0} or above and below {@code z1}; a level piece at {@code z1} is left. */
  Outline between(double z0, double z1) {
    List<Segment> kept = new ArrayList<>();
    for (Segment segment : segments) {
      List<Double> cuts = new ArrayList<>(segment.meetsZ(z0));
      cuts.addAll(segment.meetsZ(z1));
      for (Segment part : segment.cutAt(cuts)) {
        double z = part.at(0.5).z();
        if (z > z0 - TOUCH && z < z1 - TOUCH) {
          kept.add(part);
        }
      }
    }
    return new Outline(kept);
  }

  /** The outline with everything left of {@code x} pushed out to the upright line at {@code x}. */
  Outline pushedTo(double x) {
    List<Segment> kept = new ArrayList<>();
    for (Segment segment : segments) {
      for (Segment part : segment.cutAt(segment.meetsX(x))) {
        Point middle = part.at(0.5);
        if (middle.x() > x + TOUCH) {
          kept.add(part);
        } else if (Math.abs(part.from().z() - part.to().z()) > TOUCH) {
          kept.add(new Line(new Point(x, part.from().z()), new Point(x, part.to().z())));
        }
      }
    }
    return kept.isEmpty() ? Pen.at(x, from().z()).lineTo(x, to().z()).outline() : new Outline(kept);
  }

  /** The outline without the level pieces it starts with. */
  Outline withoutFloor() {
    int first = 0;
    while (first < segments.size() - 1 && isLevel(segments.get(first))) {
      first++;
    }
    return new Outline(segments.subList(first, segments.size()));
  }

  private static boolean isLevel(Segment segment) {
    return segment instanceof Line && Math.abs(segment.from().z() - segment.to().z()) < TOUCH;
  }

  /** How far out it reaches at a height; the largest where it is level. */
  double reachAt(double z) {
    double reach = 0;
    for (Segment segment : segments) {
      for (double t : segment.meetsZ(z)) {
        if (t > -TOUCH && t < 1 + TOUCH) {
          reach = Math.max(reach, segment.at(t).x());
        }
      }
    }
    return reach;
  }

  /** The smallest upright rectangle round it. */
  Box box() {
    double x0 = Double.POSITIVE_INFINITY;
    double z0 = Double.POSITIVE_INFINITY;
    double x1 = Double.NEGATIVE_INFINITY;
    double z1 = Double.NEGATIVE_INFINITY;
    for (Segment segment : segments) {
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
}
