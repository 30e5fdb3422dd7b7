package benchlore.generator.drawing;

/** A tool, small; a long one lies askew, so that it is drawn larger. */
final class SilhouetteGlyph {
  private static final double SIDE = 48;
  private static final double ROOM = 43;

  private SilhouetteGlyph() {}

  static String draw(Silhouette tool) {
    Box box = Silhouette.box(tool.mainParts());
    double longest = Math.max(box.wide(), box.high());
    double askew = (box.wide() + box.high()) / Math.sqrt(2);
    boolean turned = !tool.level() && askew < longest;
    double scale = ROOM / (turned ? askew : longest);
    Point middle = new Point(SIDE / 2, SIDE / 2);
    Affine page =
        Affine.turn(turned ? 45 : 0, box.middle()).then(Affine.page(scale, box.middle(), middle));
    Svg svg = Svg.decorative(SIDE);
    PartPainter painter = new PartPainter(svg, page, scale);
    tool.mainParts().forEach(painter::paint);
    return svg.end();
  }
}
