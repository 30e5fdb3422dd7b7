package benchlore.generator.drawing.svg;

/** Arrowheads and the lines that carry them, in page units (y down, kept in {@code z}). */
public final class Arrows {
  private static final double LENGTH = 7;
  private static final double HALF_WIDTH = 2.4;

  private Arrows() {}

  /** A dimension line; where there is no room the arrows stand outside and point in. */
  public static void between(Svg svg, Point a, Point b) {
    double length = a.distance(b);
    if (length >= 2.4 * LENGTH) {
      svg.line("drw-dim", a.x(), a.z(), b.x(), b.z());
      head(svg, b, a);
      head(svg, a, b);
      return;
    }
    double ux = (b.x() - a.x()) / length;
    double uz = (b.z() - a.z()) / length;
    double out = LENGTH + 5;
    Point before = new Point(a.x() - ux * out, a.z() - uz * out);
    Point after = new Point(b.x() + ux * out, b.z() + uz * out);
    svg.line("drw-dim", before.x(), before.z(), after.x(), after.z());
    head(svg, before, a);
    head(svg, after, b);
  }

  /** A thin line from a text to what it speaks of. */
  public static void pointer(Svg svg, Point from, Point to) {
    svg.line("drw-dim", from.x(), from.z(), to.x(), to.z());
    if (from.distance(to) > LENGTH) {
      head(svg, from, to);
    }
  }

  /** A bold arrow that shows a movement. */
  public static void movement(Svg svg, Point from, Point to) {
    svg.line("drw-move", from.x(), from.z(), to.x(), to.z());
    big(svg, from, to);
  }

  /** A bold head at the end of a curve that arrives from the direction of {@code from}. */
  public static void big(Svg svg, Point from, Point tip) {
    head(svg, from, tip, 1.5);
  }

  private static void head(Svg svg, Point from, Point tip) {
    head(svg, from, tip, 1);
  }

  private static void head(Svg svg, Point from, Point tip, double size) {
    double length = from.distance(tip);
    double ux = (tip.x() - from.x()) / length * size;
    double uz = (tip.z() - from.z()) / length * size;
    double bx = tip.x() - ux * LENGTH;
    double bz = tip.z() - uz * LENGTH;
    svg.path(
        "drw-arrow",
        "M"
            + Svg.pair(tip.x(), tip.z())
            + "L"
            + Svg.pair(bx - uz * HALF_WIDTH, bz + ux * HALF_WIDTH)
            + "L"
            + Svg.pair(bx + uz * HALF_WIDTH, bz - ux * HALF_WIDTH)
            + "Z");
  }
}
