package benchlore.generator.drawing;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;

/** Small pictures of faults that are sooner seen than read about. */
final class FaultDrawing {
  private static final Map<String, Consumer<FaultCanvas>> PICTURES = pictures();

  private FaultDrawing() {}

  private static Map<String, Consumer<FaultCanvas>> pictures() {
    Map<String, Consumer<FaultCanvas>> all = new TreeMap<>(FilmFaults.all());
    all.putAll(WoodFaults.all());
    return all;
  }

  static Iterable<String> names() {
    return PICTURES.keySet();
  }

  static Optional<String> draw(String name, Label label) {
    return draw(
        name, Svg.titled(FaultCanvas.SIDE, FaultCanvas.SIDE, label), label.idPrefix() + "-c");
  }

  static Optional<String> glyph(String name) {
    return draw(name, Svg.decorative(FaultCanvas.SIDE), "c");
  }

  private static Optional<String> draw(String name, Svg svg, String clip) {
    return Optional.ofNullable(PICTURES.get(name))
        .map(
            picture -> {
              FaultCanvas canvas = new FaultCanvas(svg, clip);
              picture.accept(canvas);
              return canvas.end();
            });
  }
}
