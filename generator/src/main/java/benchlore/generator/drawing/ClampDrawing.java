package benchlore.generator.drawing;

/** Three clamps over a glue line, with the cones of pressure below their pads. */
final class ClampDrawing {
  private static final double HEIGHT = 232;
  private static final double LEFT = 16;
  private static final double WIDE = 288;
  private static final double PAD_TOP = 44;
  private static final double TOP = 54;
  private static final double ROOM = 116;
  private static final int CLAMPS = 3;

  private ClampDrawing() {}

  static String draw(ClampSpread spread, String title, String idPrefix) {
    double length = spread.spacingMm() * CLAMPS;
    double scale = Math.min(WIDE / length, ROOM / (spread.throughMm() * 1.4));
    double glue = TOP + spread.throughMm() * scale;
    Svg svg = Svg.titled(Dimensions.PAGE_WIDTH, HEIGHT, new Label(idPrefix, title, words(spread)));
    double left = LEFT + (WIDE - length * scale) / 2;
    double below = spread.throughMm() * scale * 0.4;
    svg.rect("drw-stock", left, TOP, length * scale, glue - TOP);
    svg.rect("drw-stock", left, glue, length * scale, below);
    svg.clippedGroup(
        idPrefix + "-c",
        new Trail(left, TOP)
            .to(left + length * scale, TOP)
            .to(left + length * scale, glue)
            .to(left, glue)
            .closed());
    for (int i = 0; i < CLAMPS; i++) {
      cone(svg, spread, left + (i + 0.5) * spread.spacingMm() * scale, new Depth(scale, glue));
    }
    svg.endGroup();
    svg.line("drw-edge", left, glue, left + length * scale, glue);
    for (int i = 0; i < CLAMPS; i++) {
      pad(svg, spread, left + (i + 0.5) * spread.spacingMm() * scale, scale);
    }
    dimension(svg, spread, left, new Depth(scale, glue + below));
    return svg.end();
  }

  /** A scale and a page height. */
  private record Depth(double scale, double y) {}

  private static void cone(Svg svg, ClampSpread spread, double x, Depth glue) {
    double top = spread.padMm() / 2 * glue.scale();
    double bottom = spread.coveredMm() / 2 * glue.scale();
    svg.path(
        "drw-cone",
        new Trail(x - top, TOP)
            .to(x + top, TOP)
            .to(x + bottom, glue.y())
            .to(x - bottom, glue.y())
            .closed());
  }

  private static void pad(Svg svg, ClampSpread spread, double x, double scale) {
    double wide = spread.padMm() * scale;
    svg.rect("drw-metal", x - wide / 2, PAD_TOP, wide, TOP - PAD_TOP);
    Arrows.movement(svg, new Point(x, PAD_TOP - 20), new Point(x, PAD_TOP - 1));
  }

  private static void dimension(Svg svg, ClampSpread spread, double left, Depth foot) {
    double step = spread.spacingMm() * foot.scale();
    Dimensions dims = new Dimensions(svg);
    dims.level(
        foot.y() + 12,
        new Point(left + step / 2, foot.y()),
        new Point(left + step * 1.5, foot.y()),
        new Dimensions.Level(
            spread.gapMm() > 0 ? "spacing; cones leave a gap" : "spacing; cones meet",
            Measure.mm(spread.spacingMm()),
            false));
  }

  private static String words(ClampSpread spread) {
    String end =
        spread.gapMm() > 0
            ? "Between two clamps " + Words.mm(spread.gapMm()) + " of the glue line get none."
            : "The cones of neighbouring clamps meet.";
    return "Clamps "
        + Words.mm(spread.spacingMm())
        + " apart with pads of "
        + Words.mm(spread.padMm())
        + ". Pressure spreads at 45 degrees through "
        + Words.mm(spread.throughMm())
        + " of wood, so each presses "
        + Words.mm(spread.coveredMm())
        + " of the glue line. "
        + end;
  }
}
