package benchlore.generator.drawing;

/** Two bold strokes over what must not be done. */
final class Crossed {
  private Crossed() {}

  static void out(Svg svg, double x, double y, double wide, double high) {
    svg.line("lad-moment drw-thick", x, y, x + wide, y + high);
    svg.line("lad-moment drw-thick", x + wide, y, x, y + high);
  }
}
