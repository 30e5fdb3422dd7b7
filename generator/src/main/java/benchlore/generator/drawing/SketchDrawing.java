package benchlore.generator.drawing;

/** Sketches of shop practice, in page units. */
final class SketchDrawing {
  private SketchDrawing() {}

  static String draw(ShopSketch sketch, String title, String idPrefix) {
    Label label = new Label(idPrefix, title, sketch.words());
    Svg svg = Svg.titled(Dimensions.PAGE_WIDTH, sketch.height(), label);
    draw(svg, sketch);
    return svg.end();
  }

  private static void draw(Svg svg, ShopSketch sketch) {
    switch (sketch) {
      case FEED_ROUND_A_PART -> RouterSketches.feed(svg);
      case TABS_AND_SKIN -> RouterSketches.tabs(svg);
      case ROUTER_SLED -> RouterSketches.sled(svg);
      case SCRAPER_EDGE -> BenchSketches.scraper(svg);
      case SPRAY_PATH -> SpraySketches.path(svg);
      case FAN_PATTERNS -> SpraySketches.patterns(svg);
      case SPRING_JOINT -> BenchSketches.spring(svg);
      case FILLET -> BenchSketches.fillet(svg);
      case AIR_THROUGH_A_GARAGE -> SafetySketches.air(svg);
      case OILY_RAGS -> SafetySketches.rags(svg);
      case NIBS_LEVELLED -> FilmSketches.betweenCoats(svg);
      case WET_SANDING -> FilmSketches.wetSanding(svg);
      case PORES_FILLED -> FilmSketches.grainFilling(svg);
      case TAPE_PULLED -> FilmSketches.masking(svg);
      case SECOND_POT -> FilmSketches.mixing(svg);
      case TWO_HOLES -> ScrewSketches.pilot(svg);
      case SOLID_TOP -> ScrewSketches.solidTop(svg);
      case HINGE_LEAF -> ScrewSketches.hinge(svg);
      case ROUGH_THEN_FINISH -> CncSketches.passes(svg);
      case SPINDLE_LEAN -> CncSketches.tram(svg);
      case SURFACING_PATH -> CncSketches.spoilboard(svg);
      case V_DEPTH -> CncSketches.carving(svg);
      case RAKING_LIGHT -> SurfaceSketches.raking(svg);
      case DENT_STEAMED -> SurfaceSketches.dent(svg);
      case THIRSTY_ENDS -> SurfaceSketches.endGrain(svg);
      case PATTERN_ROUTING -> FitSketches.template(svg);
      case TAPED_MITRES -> FitSketches.tape(svg);
      case SHAPED_CAULS -> FitSketches.caul(svg);
      case RUN_PARED -> MendSketches.run(svg);
      case CRACK_FILLED -> MendSketches.crack(svg);
      case POLISHING_PATHS -> FilmSketches.polishing(svg);
      case PLANE_PRESSURE -> BenchSketches.planing(svg);
      case WHERE_Z_IS_ZERO -> CncSketches.zero(svg);
      case TAPE_AND_GLUE -> FitSketches.tapeAndGlue(svg);
      case BENT_STRIPS -> FitSketches.bend(svg);
    }
  }
}
