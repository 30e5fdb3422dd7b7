package benchlore.generator.drawing;

/** A tool, small; a long one lies askew, so that it is drawn larger. */
final class SilhouetteGlyph {
  private static final double SIDE = 48;
  private static final double ROOM = 43;

  private SilhouetteGlyph() {}

  static String draw(Silhouette tool) {
    Box box = Silhouette.box(tool.mainParts());
    double scale = scale(tool, box);
    Point middle = new Point(SIDE / 2, SIDE / 2);
    Affine page =
        Affine.turn(askew(tool, box) ? 45 : 0, box.middle())
            .then(Affine.page(scale, box.middle(), middle));
    Svg svg = Svg.decorative(SIDE);
    PartPainter painter = new PartPainter(svg, page, scale);
    tool.mainParts().forEach(painter::paint);
    return svg.end();
  }

  /** What the picture's side stands for, millimetres. */
  static double sideMm(Silhouette tool) {
    return SIDE / scale(tool, Silhouette.box(tool.mainParts()));
  }

  private static double scale(Silhouette tool, Box box) {
    return ROOM / (askew(tool, box) ? diagonal(box) : Math.max(box.wide(), box.high()));
  }

  private static boolean askew(Silhouette tool, Box box) {
    return !tool.level() && diagonal(box) < Math.max(box.wide(), box.high());
  }

  /** How wide and high a box is that lies at 45 degrees. */
  private static double diagonal(Box box) {
    return (box.wide() + box.high()) / Math.sqrt(2);
  }
}
