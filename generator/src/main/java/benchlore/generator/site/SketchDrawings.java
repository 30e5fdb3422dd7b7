package benchlore.generator.site;

import benchlore.generator.drawing.BoardCut;
import benchlore.generator.drawing.Drawings;
import benchlore.generator.drawing.ShopSketch;
import benchlore.generator.library.Entry;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Sketches of shop practice, on the records that speak of it. */
final class SketchDrawings {
  /**
   * A sketch and the words under it.
   *
   * @param sketch what is drawn
   * @param caption a sentence
   */
  private record Shown(ShopSketch sketch, String caption) {}

  private static final Set<String> ABOUT_GRAIN =
      Set.of("choosing-flat-or-quarter-sawn", "reading-a-board");

  private static final Shown FEED =
      new Shown(ShopSketch.FEED_ROUND_A_PART, "The way to feed, outside and inside");
  private static final Shown SLED =
      new Shown(
          ShopSketch.ROUTER_SLED, "The rails give the plane, the wedges hold the board still");
  private static final Shown SCRAPER =
      new Shown(ShopSketch.SCRAPER_EDGE, "From square edge to hook to shaving");
  private static final Shown HOLES =
      new Shown(ShopSketch.TWO_HOLES, "The holes on the left, the screw in them on the right");
  private static final Map<String, Shown> BY_ID =
      Map.ofEntries(
          Map.entry("climb-cut-avoidance", FEED),
          Map.entry("routing-an-edge-cleanly", FEED),
          Map.entry(
              "tabs-and-onion-skin",
              new Shown(ShopSketch.TABS_AND_SKIN, "A skin, a tab, and where to put them")),
          Map.entry("router-sled-thicknessing", SLED),
          Map.entry("router-sled", SLED),
          Map.entry("sharpening-a-card-scraper", SCRAPER),
          Map.entry(
              "spraying-basics",
              new Shown(ShopSketch.SPRAY_PATH, "Move the whole arm, not the wrist")),
          Map.entry(
              "setting-up-an-hvlp-gun",
              new Shown(ShopSketch.FAN_PATTERNS, "Test patterns on paper, and what each asks for")),
          Map.entry(
              "spring-jointing",
              new Shown(ShopSketch.SPRING_JOINT, "The gap, drawn far too large")),
          Map.entry(
              "epoxy-filleting", new Shown(ShopSketch.FILLET, "A round tool leaves the fillet")),
          Map.entry("choosing-a-pilot-hole", HOLES),
          Map.entry("driving-brass-screws", HOLES),
          Map.entry(
              "ventilating-a-garage",
              new Shown(
                  ShopSketch.AIR_THROUGH_A_GARAGE,
                  "Air in on one side, across the work, out on the other")),
          Map.entry(
              "disposing-of-oily-rags",
              new Shown(ShopSketch.OILY_RAGS, "Flat and single, or under water; never in a heap")),
          Map.entry(
              "sanding-between-coats",
              new Shown(ShopSketch.NIBS_LEVELLED, "Take the nibs off and stop short of the edge")),
          Map.entry(
              "wet-sanding-a-film",
              new Shown(ShopSketch.WET_SANDING, "Part of the way, and where to stop")),
          Map.entry(
              "grain-filling", new Shown(ShopSketch.PORES_FILLED, "Open, filled and wiped level")),
          Map.entry(
              "masking-off",
              new Shown(ShopSketch.TAPE_PULLED, "Pulling the tape, and the edge it leaves")),
          Map.entry(
              "mixing-two-part",
              new Shown(ShopSketch.SECOND_POT, "What clings to the first pot stays behind")),
          Map.entry(
              "fastening-a-solid-top",
              new Shown(ShopSketch.SOLID_TOP, "Fixed on one line, free on both sides of it")),
          Map.entry(
              "hinge-mortising",
              new Shown(ShopSketch.HINGE_LEAF, "The leaf in its bed, seen from the end")),
          Map.entry(
              "roughing-and-finishing-passes",
              new Shown(ShopSketch.ROUGH_THEN_FINISH, "First the bulk, then the shape")),
          Map.entry(
              "tramming-a-spindle",
              new Shown(ShopSketch.SPINDLE_LEAN, "A leaning spindle, and one that stands square")),
          Map.entry(
              "surfacing-a-spoilboard",
              new Shown(ShopSketch.SURFACING_PATH, "To and fro, each pass over part of the last")),
          Map.entry(
              "v-carving",
              new Shown(ShopSketch.V_DEPTH, "How wide the groove is sets how deep the bit goes")),
          Map.entry(
              "raking-light-check", new Shown(ShopSketch.RAKING_LIGHT, "What low light shows")),
          Map.entry(
              "steaming-a-dent",
              new Shown(ShopSketch.DENT_STEAMED, "Pressed fibres swell back; cut ones do not")),
          Map.entry(
              "sealing-end-grain",
              new Shown(ShopSketch.THIRSTY_ENDS, "Why an end drinks and a face does not")),
          Map.entry(
              "template-routing",
              new Shown(
                  ShopSketch.PATTERN_ROUTING,
                  "The bearing follows the template, the cutter follows the bearing")),
          Map.entry(
              "dry-fit-with-tape",
              new Shown(ShopSketch.TAPED_MITRES, "Tape as a clamp for a small box")),
          Map.entry(
              "clamping-curved-work",
              new Shown(ShopSketch.SHAPED_CAULS, "The offcuts make the clamps pull straight")),
          Map.entry(
              "repairing-a-run",
              new Shown(ShopSketch.RUN_PARED, "Down to the film and no further")),
          Map.entry(
              "filling-a-crack-with-epoxy",
              new Shown(ShopSketch.CRACK_FILLED, "Dammed, wetted and filled")),
          Map.entry(
              "french-polishing",
              new Shown(ShopSketch.POLISHING_PATHS, "The pad in turn: straight, circles, eights")),
          Map.entry(
              "jointing-with-a-hand-plane",
              new Shown(ShopSketch.PLANE_PRESSURE, "Pressure moves from toe to heel")),
          Map.entry(
              "setting-cnc-zero",
              new Shown(
                  ShopSketch.WHERE_Z_IS_ZERO, "One zero for carving, another for cutting through")),
          Map.entry(
              "tape-and-superglue-holding",
              new Shown(ShopSketch.TAPE_AND_GLUE, "The layers, pulled apart")),
          Map.entry(
              "bent-lamination",
              new Shown(
                  ShopSketch.BENT_STRIPS, "Strips over a form, and where they spring back to")));

  private SketchDrawings() {}

  /** The sketches of a record; none for most. */
  static List<BitDrawings.Figure> of(Entry entry) {
    List<BitDrawings.Figure> figures = new ArrayList<>();
    Shown shown = BY_ID.get(entry.id());
    if (shown != null) {
      figures.add(
          new BitDrawings.Figure(
              Drawings.sketch(shown.sketch(), entry.title(), "sketch"), shown.caption()));
    }
    if (ABOUT_GRAIN.contains(entry.id())) {
      for (BoardCut cut : BoardCut.values()) {
        String title = Labels.capital(cut.word()) + " board";
        figures.add(
            new BitDrawings.Figure(Drawings.boardGrain(cut, title, "board-" + cut.word()), title));
      }
    }
    return figures;
  }
}
