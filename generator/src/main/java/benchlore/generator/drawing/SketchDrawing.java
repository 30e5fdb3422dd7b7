package benchlore.generator.drawing;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/** The sketches a record may ask for by name: shop practice, boards and clamps. */
final class SketchDrawing {
  /** Draws under a title, with ids that start as given. */
  private interface Picture {
    String draw(String title, String idPrefix);
  }

  // A 40 mm caul under clamps 200 mm apart: the cones meet in the glue line.
  private static final ClampSpread CLAMPS = new ClampSpread(30, 85, 200);

  private static final List<List<ShopSketch>> SHOP =
      List.of(
          AbrasiveSketches.ALL,
          BenchSketches.ALL,
          BrushSketches.ALL,
          CabinetSketches.ALL,
          CncSketches.ALL,
          FilmSketches.ALL,
          FitSketches.ALL,
          GlueSketches.ALL,
          JoinerySketches.ALL,
          MendSketches.ALL,
          ReadinessSketches.ALL,
          RouterSketches.ALL,
          SafetySketches.ALL,
          ScrewSketches.ALL,
          SpraySketches.ALL,
          SurfaceSketches.ALL);

  private static final Map<String, Picture> PICTURES = pictures();

  private SketchDrawing() {}

  private static Map<String, Picture> pictures() {
    Map<String, Picture> all = new TreeMap<>();
    for (List<ShopSketch> sketches : SHOP) {
      sketches.forEach(sketch -> all.put(sketch.name(), sketch::draw));
    }
    for (BoardCut cut : BoardCut.values()) {
      all.put(cut.word() + "-board", (title, ids) -> GrainDrawing.draw(cut, title, ids));
    }
    all.put("clamp-pressure", (title, ids) -> ClampDrawing.draw(CLAMPS, title, ids));
    return all;
  }

  static SortedSet<String> names() {
    return Collections.unmodifiableSortedSet(new TreeSet<>(PICTURES.keySet()));
  }

  static Optional<String> draw(String name, String title, String idPrefix) {
    return Optional.ofNullable(PICTURES.get(name)).map(picture -> picture.draw(title, idPrefix));
  }
}
