package benchlore.generator.picture;

import benchlore.generator.drawing.svg.Point;
import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A telling feature of a tool: the words of a {@code text} in its file, at the place they speak of.
 *
 * @param text a few words
 * @param at its place, millimetres, y down
 * @param side where the words stand
 */
record Callout(String text, Point at, Side side) {
  /** Which side of the drawing a callout's words stand on. */
  enum Side {
    /** Above the tool. */
    ABOVE,
    /** Below it. */
    BELOW,
    /** Wherever its point is nearer. */
    NEARER
  }

  /** The callouts of a checked picture, in order. */
  static List<Callout> of(Element root) {
    List<Callout> callouts = new ArrayList<>();
    collect(root, new AffineTransform(), callouts);
    return callouts;
  }

  private static void collect(Element element, AffineTransform move, List<Callout> callouts) {
    AffineTransform own = new AffineTransform(move);
    Transforms.parse(element.value("transform")).ifPresent(own::concatenate);
    if (element.name().equals("text")) {
      Point2D at =
          own.transform(
              new Point2D.Double(
                  element.number("x").orElseThrow(), element.number("y").orElseThrow()),
              new Point2D.Double());
      String side = element.value("data-side").toUpperCase(Locale.ROOT);
      callouts.add(
          new Callout(
              words(element),
              new Point(at.getX(), at.getY()),
              side.isEmpty() ? Side.NEARER : Side.valueOf(side)));
    } else {
      element.children().forEach(child -> collect(child, own, callouts));
    }
  }

  /** The words of a text and of the pieces a drawing program broke it into. */
  static String words(Element text) {
    StringBuilder words = new StringBuilder(text.text());
    text.children("tspan").forEach(part -> words.append(' ').append(words(part)));
    return words.toString().strip();
  }
}
