package benchlore.generator.drawing;

/** Lines of grain on cut or drawn wood in a sketch. */
final class Hatch {
  private static final double STEP = 9;

  private Hatch() {}

  /** Level lines in a box, a little in from its sides. */
  static void level(Svg svg, double x0, double x1, double y0, double y1) {
    for (double y = y0; y < y1; y += STEP) {
      svg.line("drw-hatch", x0, y, x1, y);
    }
  }

  /** A block of wood, its grain level. */
  static void block(Svg svg, double x, double y, double wide, double high) {
    svg.rect("drw-stock", x, y, wide, high);
    level(svg, x + 5, x + wide - 5, y + 7, y + high - 2);
  }
}
