package benchlore.generator.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.UnaryOperator;

/** A form in millimetres, made by one of the factories, then mirrored, turned or moved. */
public final class Shape {
  /** Fields to fill and lines to draw over them. */
  record Ink(List<Trace> areas, List<Trace> strokes) {
    Ink {
      areas = List.copyOf(areas);
      strokes = List.copyOf(strokes);
    }

    Ink each(UnaryOperator<Trace> change) {
      return new Ink(areas.stream().map(change).toList(), strokes.stream().map(change).toList());
    }

    Ink and(Ink other) {
      List<Trace> both = new ArrayList<>(areas);
      both.addAll(other.areas);
      List<Trace> lines = new ArrayList<>(strokes);
      lines.addAll(other.strokes);
      return new Ink(both, lines);
    }
  }

  /** How its lines look. */
  enum Stroke {
    /** As its material says. */
    OWN,
    /** Saw teeth: a fine cutting edge, the field without an outline. */
    TEETH,
    /** Thin lines over the field. */
    THIN
  }

  private final DoubleFunction<Ink> ink;
  private final Stroke stroke;

  private Shape(Stroke stroke, DoubleFunction<Ink> ink) {
    this.stroke = stroke;
    this.ink = ink;
  }

  private static Shape area(Trace trace) {
    return new Shape(Stroke.OWN, scale -> new Ink(List.of(trace), List.of()));
  }

  private static Shape stroke(Trace trace) {
    return new Shape(Stroke.OWN, scale -> new Ink(List.of(), List.of(trace)));
  }

  /** An upright rectangle from its lower left corner, its corners rounded. */
  public static Shape rect(Point at, Point size, double radius) {
    double right = at.x() + size.x();
    double top = at.z() + size.z();
    return polygon(
        List.of(
            new Knot(at, false, radius),
            new Knot(new Point(right, at.z()), false, radius),
            new Knot(new Point(right, top), false, radius),
            new Knot(new Point(at.x(), top), false, radius)));
  }

  /** A circle, where both radii are the same, or an ellipse. */
  public static Shape ellipse(Point centre, Point radii) {
    return area(round(centre, radii));
  }

  static Trace round(Point centre, Point radii) {
    return new Tracer(Tracer.at(centre, radii, 1, 0)).arc(centre, radii, 0, 2 * Math.PI).closed();
  }

  /** A closed outline of straight edges, corners rounded by their radius. */
  public static Shape polygon(List<Knot> knots) {
    return area(Outlines.straight(knots, true));
  }

  /** A closed outline that flows through its knots, corners apart. */
  public static Shape smooth(List<Knot> knots) {
    return area(Outlines.smooth(knots, true));
  }

  /** An open line of straight pieces. */
  public static Shape line(List<Knot> knots) {
    return stroke(Outlines.straight(knots, false));
  }

  /** An open line that flows. */
  public static Shape curve(List<Knot> knots) {
    return stroke(Outlines.smooth(knots, false));
  }

  /** A rod or strap along a line. */
  public static Shape bar(List<Knot> along, double thick) {
    return area(Outlines.bar(along, thick));
  }

  /**
   * Part of a ring, or a whole one, between two angles in degrees, anticlockwise from the right.
   */
  public static Shape ring(Point centre, double outer, double inner, Sweep sweep) {
    Point far = new Point(outer, outer);
    Point near = new Point(inner, inner);
    if (sweep.whole()) {
      Trace hole = round(centre, near).moved(Mirror.UP_DOWN.move()).moved(back(centre));
      return new Shape(Stroke.OWN, s -> new Ink(List.of(round(centre, far), hole), List.of()));
    }
    double from = Math.toRadians(sweep.from());
    double to = Math.toRadians(sweep.to());
    Tracer tracer = new Tracer(Tracer.at(centre, far, Math.cos(from), Math.sin(from)));
    tracer.arc(centre, far, from, to);
    tracer.line(Tracer.at(centre, near, Math.cos(to), Math.sin(to)));
    return area(tracer.arc(centre, near, to, from).closed());
  }

  /** Back to where a figure stood before it was mirrored up and down, now running clockwise. */
  private static Affine back(Point centre) {
    return Affine.shift(0, 2 * centre.z());
  }

  /** Part of a circle's line. */
  public static Shape arc(Point centre, double radius, Sweep sweep) {
    Point radii = new Point(radius, radius);
    double from = Math.toRadians(sweep.from());
    return stroke(
        new Tracer(Tracer.at(centre, radii, Math.cos(from), Math.sin(from)))
            .arc(centre, radii, from, Math.toRadians(sweep.to()))
            .open());
  }

  /** Angles in degrees. */
  public record Sweep(double from, double to) {
    boolean whole() {
      return Math.abs(to - from) >= 360;
    }
  }

  /** A closed outline of pieces: two numbers a line, four a quadratic, six a cubic curve. */
  public static Shape path(List<List<Double>> pieces) {
    Point here = new Point(pieces.get(0).get(0), pieces.get(0).get(1));
    Tracer tracer = new Tracer(here);
    for (List<Double> piece : pieces.subList(1, pieces.size())) {
      int n = piece.size();
      Point to = new Point(piece.get(n - 2), piece.get(n - 1));
      Point lead = new Point(piece.get(0), piece.get(1));
      if (n < 4) {
        tracer.line(to);
      } else if (n < 6) {
        tracer.curve(here.towards(lead, 2.0 / 3), to.towards(lead, 2.0 / 3), to);
      } else {
        tracer.curve(lead, new Point(piece.get(2), piece.get(3)), to);
      }
      here = to;
    }
    return area(tracer.closed());
  }

  /** Saw teeth; {@code lean} from -1, to the line's start, to 1, to its end. */
  public static Shape teeth(List<Point> along, double pitch, double depth, double lean) {
    return new Shape(Stroke.TEETH, new Patterns.Teeth(along, pitch, depth, lean)::ink);
  }

  /** A threaded rod. */
  public static Shape thread(List<Point> along, double diameter, double pitch) {
    return new Shape(Stroke.THIN, s -> Patterns.thread(along, diameter, pitch, s));
  }

  /** Parallel lines in a field at an angle in degrees; crossed, they are a knurl. */
  public static Shape hatch(List<Point> inside, double pitch, double angle, boolean cross) {
    return new Shape(Stroke.OWN, new Patterns.Hatch(inside, pitch, angle, cross)::ink);
  }

  /** Rows of dots in a field. */
  public static Shape dots(List<Point> inside, double pitch, double radius) {
    return new Shape(Stroke.OWN, s -> Patterns.dots(inside, pitch, radius, s));
  }

  /** This shape and its mirror image. */
  public Shape mirrored(Mirror mirror) {
    return and(moved(mirror.move()));
  }

  /** Turned anticlockwise. */
  public Shape turned(double degrees, Point about) {
    return moved(Affine.turn(degrees, about));
  }

  /** Moved. */
  public Shape shifted(double dx, double dy) {
    return moved(Affine.shift(dx, dy));
  }

  /** This shape and another, drawn as one. */
  public Shape and(Shape other) {
    return new Shape(stroke, scale -> ink.apply(scale).and(other.ink.apply(scale)));
  }

  private Shape moved(Affine move) {
    return new Shape(stroke, scale -> ink.apply(scale).each(trace -> trace.moved(move)));
  }

  Ink ink(double scale) {
    return ink.apply(scale);
  }

  Stroke stroke() {
    return stroke;
  }
}
