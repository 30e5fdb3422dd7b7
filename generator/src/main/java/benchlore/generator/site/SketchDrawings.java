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
  private static final Map<String, Shown> BY_ID =
      Map.of(
          "climb-cut-avoidance",
          FEED,
          "routing-an-edge-cleanly",
          FEED,
          "tabs-and-onion-skin",
          new Shown(ShopSketch.TABS_AND_SKIN, "A skin, a tab, and where to put them"),
          "router-sled-thicknessing",
          SLED,
          "router-sled",
          SLED,
          "sharpening-a-card-scraper",
          SCRAPER,
          "spraying-basics",
          new Shown(ShopSketch.SPRAY_PATH, "Move the whole arm, not the wrist"),
          "setting-up-an-hvlp-gun",
          new Shown(ShopSketch.FAN_PATTERNS, "Test patterns on paper, and what each asks for"),
          "spring-jointing",
          new Shown(ShopSketch.SPRING_JOINT, "The gap, drawn far too large"),
          "epoxy-filleting",
          new Shown(ShopSketch.FILLET, "A round tool leaves the fillet"));

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
