package benchlore.generator.drawing;

/** Sketches of shop practice, in page units. */
final class SketchDrawing {
  private SketchDrawing() {}

  static String draw(ShopSketch sketch, String title, String idPrefix) {
    Svg svg =
        Svg.titled(
            Dimensions.PAGE_WIDTH, height(sketch), new Label(idPrefix, title, sketch.words()));
    switch (sketch) {
      case FEED_ROUND_A_PART -> RouterSketches.feed(svg);
      case TABS_AND_SKIN -> RouterSketches.tabs(svg);
      case ROUTER_SLED -> RouterSketches.sled(svg);
      case SCRAPER_EDGE -> BenchSketches.scraper(svg);
      case SPRING_JOINT -> BenchSketches.spring(svg);
      case FILLET -> BenchSketches.fillet(svg);
      case SPRAY_PATH -> SpraySketches.path(svg);
      case FAN_PATTERNS -> SpraySketches.patterns(svg);
    }
    return svg.end();
  }

  private static double height(ShopSketch sketch) {
    return switch (sketch) {
      case FEED_ROUND_A_PART -> 250;
      case TABS_AND_SKIN -> 244;
      case ROUTER_SLED -> 196;
      case SCRAPER_EDGE -> 186;
      case SPRING_JOINT -> 172;
      case FILLET -> 188;
      case SPRAY_PATH -> 268;
      case FAN_PATTERNS -> 168;
    };
  }
}
