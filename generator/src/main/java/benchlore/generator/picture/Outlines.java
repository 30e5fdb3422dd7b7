package benchlore.generator.picture;

import benchlore.generator.drawing.svg.Box;
import benchlore.generator.drawing.svg.Num;
import benchlore.generator.drawing.svg.Point;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;

/** The outlines of an element that is drawn, and what is to be known of them. */
final class Outlines {
  /** What is drawn and has an outline. */
  static final Set<String> DRAWN =
      Set.of("path", "rect", "circle", "ellipse", "line", "polyline", "polygon");

  private static final double FLATNESS = 0.001;

  private Outlines() {}

  /** The outline of an element of {@link #DRAWN}; empty if what it says can't be read. */
  static Optional<Path2D.Double> of(Element element) {
    return switch (element.name()) {
      case "path" -> PathData.parse(element.value("d"));
      case "polyline" -> PathData.parse("M" + element.value("points"));
      case "polygon" -> PathData.parse("M" + element.value("points") + "Z");
      case "rect" -> numbers(element, "x", "y", "width", "height", "rx", "ry").map(Outlines::rect);
      case "circle" -> numbers(element, "cx", "cy", "r", "r").map(Outlines::ellipse);
      case "ellipse" -> numbers(element, "cx", "cy", "rx", "ry").map(Outlines::ellipse);
      default ->
          numbers(element, "x1", "y1", "x2", "y2")
              .map(n -> new Path2D.Double(new Line2D.Double(n[0], n[1], n[2], n[3])));
    };
  }

  private static Optional<double[]> numbers(Element element, String... attributes) {
    OptionalDouble[] read =
        Stream.of(attributes).map(element::number).toArray(OptionalDouble[]::new);
    return Stream.of(read).allMatch(OptionalDouble::isPresent)
        ? Optional.of(Stream.of(read).mapToDouble(OptionalDouble::getAsDouble).toArray())
        : Optional.empty();
  }

  private static Path2D.Double rect(double[] n) {
    double rx = n[4] == 0 ? n[5] : n[4];
    double ry = n[5] == 0 ? n[4] : n[5];
    return new Path2D.Double(
        rx == 0
            ? new Rectangle2D.Double(n[0], n[1], n[2], n[3])
            : new RoundRectangle2D.Double(n[0], n[1], n[2], n[3], 2 * rx, 2 * ry));
  }

  private static Path2D.Double ellipse(double[] n) {
    return new Path2D.Double(new Ellipse2D.Double(n[0] - n[2], n[1] - n[3], 2 * n[2], 2 * n[3]));
  }

  /** The smallest upright rectangle round an outline; empty where nothing is drawn. */
  static Optional<Box> box(Path2D outline) {
    Optional<Box> box = Optional.empty();
    double[] at = new double[6];
    for (PathIterator i = outline.getPathIterator(null, FLATNESS); !i.isDone(); i.next()) {
      if (i.currentSegment(at) != PathIterator.SEG_CLOSE) {
        Point point = new Point(at[0], at[1]);
        Box here = new Box(at[0], at[1], at[0], at[1]);
        box = Optional.of(box.map(b -> b.with(point)).orElse(here));
      }
    }
    return box;
  }

  /** Path data of an outline, moved. */
  static String data(Path2D outline, AffineTransform move) {
    StringBuilder d = new StringBuilder();
    double[] at = new double[6];
    for (PathIterator i = outline.getPathIterator(move); !i.isDone(); i.next()) {
      int kind = i.currentSegment(at);
      if (kind == PathIterator.SEG_CLOSE) {
        d.append('Z');
        continue;
      }
      d.append("MLQC".charAt(kind));
      // A move and a line hold one place, a quadratic curve two, a cubic three.
      int places = Math.max(1, kind);
      for (int n = 0; n < 2 * places; n++) {
        d.append(n == 0 ? "" : " ").append(Num.of(at[n]));
      }
    }
    return d.toString();
  }
}
