package benchlore.generator.drawing.bit;

import benchlore.generator.drawing.svg.Point;
import java.util.ArrayList;
import java.util.List;

/** Draws an outline point by point; pieces of no length are left out. */
final class Pen {
  private static final double NOTHING = 1e-9;
  private final List<Segment> segments = new ArrayList<>();
  private Point here;

  private Pen(Point start) {
    here = start;
  }

  static Pen at(double x, double z) {
    return new Pen(new Point(x, z));
  }

  Pen lineTo(double x, double z) {
    Point next = new Point(x, z);
    if (here.distance(next) > NOTHING) {
      segments.add(new Line(here, next));
      here = next;
    }
    return this;
  }

  /** Anticlockwise arc (z up) round a centre: from the tip outwards it bulges out of the bit. */
  Pen bulgeTo(double x, double z, Point centre) {
    return arc(new Point(x, z), centre, true);
  }

  /** Clockwise arc (z up) round a centre: a hollow in the bit. */
  Pen hollowTo(double x, double z, Point centre) {
    return arc(new Point(x, z), centre, false);
  }

  private Pen arc(Point next, Point centre, boolean anticlockwise) {
    if (here.distance(next) > NOTHING) {
      segments.add(Arc.of(here, next, centre, anticlockwise));
      here = next;
    }
    return this;
  }

  Outline outline() {
    return new Outline(segments);
  }
}
