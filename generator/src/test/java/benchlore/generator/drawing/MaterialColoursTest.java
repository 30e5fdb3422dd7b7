package benchlore.generator.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Every outline stands out from what it lies on, on a bright screen, a dark one and paper: the
 * page, the panel small pictures stand on, wood and film.
 */
class MaterialColoursTest {
  private static final Path CSS = Path.of("..", "site-template", "css", "drawing.css");
  private static final Path SITE = Path.of("..", "site-template", "css", "base.css");
  private static final Pattern PANEL = Pattern.compile("--picture: (#[0-9a-f]{6});");
  private static final Pattern BLOCK =
      Pattern.compile("(?:@media ([^{]*?) \\{\\s*)?:root \\{([^}]*)\\}");
  private static final Pattern COLOUR = Pattern.compile("--drw-([a-z-]+): (#[0-9a-f]{6}|\\w+);");

  /** Every colour by the media query it holds in; the light ones under the empty text. */
  private static Map<String, Map<String, String>> modes() throws IOException {
    Map<String, Map<String, String>> modes = new LinkedHashMap<>();
    Matcher block = BLOCK.matcher(Files.readString(CSS));
    while (block.find()) {
      String media = block.group(1) == null ? "" : block.group(1);
      Matcher colour = COLOUR.matcher(block.group(2));
      while (colour.find()) {
        modes
            .computeIfAbsent(media, m -> new LinkedHashMap<>())
            .put(colour.group(1), colour.group(2));
      }
    }
    return modes;
  }

  @Test
  void everyModeHasEveryColour() throws IOException {
    Map<String, Map<String, String>> modes = modes();
    assertEquals(4, modes.size(), modes.keySet().toString());
    modes.forEach(
        (media, colours) ->
            assertEquals(
                new TreeSet<>(modes.get("").keySet()), new TreeSet<>(colours.keySet()), media));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "drw-iron",
        "drw-blade",
        "drw-brass",
        "drw-wood",
        "drw-body",
        "drw-grip",
        "drw-dark",
        "drw-glass",
        "drw-cloth",
        "drw-edge",
        "drw-thin"
      })
  void outlinesStandOutFromThePaper(String material) throws IOException {
    Matcher rule =
        Pattern.compile("(?m)^\\." + material + " \\{(.*)\\}$").matcher(Files.readString(CSS));
    assertTrue(rule.find(), material);
    Matcher stroke = Pattern.compile("stroke: var\\(--drw-([a-z-]+)\\)").matcher(rule.group(1));
    assertTrue(stroke.find(), material);
    Matcher opacity = Pattern.compile("stroke-opacity: ([0-9.]+)").matcher(rule.group(1));
    double cover = opacity.find() ? Double.parseDouble(opacity.group(1)) : 1;
    for (Map.Entry<String, Map<String, String>> mode : modes().entrySet()) {
      if (!mode.getKey().contains("forced-colors")) {
        double[] paper = rgb(mode.getValue().get("paper"));
        double[] line = rgb(mode.getValue().get(stroke.group(1)));
        double ratio = contrast(mixed(line, paper, cover), paper);
        assertTrue(ratio >= 3, () -> material + " in '" + mode.getKey() + "': " + ratio);
      }
    }
  }

  @ParameterizedTest
  @CsvSource({
    "metal-line",
    "stock-line",
    "board-line",
    "brass-line",
    "wood-line",
    "body-line",
    "dark-line",
    "glass-line",
    "cloth-line",
    "edge",
    "ink",
    "dim"
  })
  void outlinesStandOutFromWhatSmallPicturesStandOn(String line) throws IOException {
    List<String> panels =
        PANEL.matcher(Files.readString(SITE)).results().map(m -> m.group(1)).toList();
    assertEquals(2, panels.size(), "one for a bright screen, one for a dark one");
    List<String> screens = List.of("", "(prefers-color-scheme: dark)");
    for (int i = 0; i < screens.size(); i++) {
      String colour = modes().get(screens.get(i)).get(line);
      double ratio = contrast(rgb(colour), rgb(panels.get(i)));
      assertTrue(ratio >= 3, line + " '" + screens.get(i) + "': " + ratio);
    }
  }

  @ParameterizedTest
  @CsvSource({"crack, board", "crack, film", "board-line, board", "film-line, film"})
  void whatIsDrawnOnWoodAndFilmStandsOut(String line, String ground) throws IOException {
    for (Map.Entry<String, Map<String, String>> mode : modes().entrySet()) {
      if (!mode.getKey().contains("forced-colors")) {
        double ratio = contrast(rgb(mode.getValue().get(line)), rgb(mode.getValue().get(ground)));
        assertTrue(ratio >= 3, () -> line + " in '" + mode.getKey() + "': " + ratio);
      }
    }
  }

  private static double[] rgb(String colour) {
    double[] rgb = new double[3];
    for (int i = 0; i < 3; i++) {
      rgb[i] = Integer.parseInt(colour.substring(1 + 2 * i, 3 + 2 * i), 16) / 255.0;
    }
    return rgb;
  }

  private static double[] mixed(double[] line, double[] paper, double cover) {
    double[] mixed = new double[3];
    for (int i = 0; i < 3; i++) {
      mixed[i] = cover * line[i] + (1 - cover) * paper[i];
    }
    return mixed;
  }

  /** Contrast ratio of WCAG 2.2: (L1 + 0.05) / (L2 + 0.05). */
  private static double contrast(double[] a, double[] b) {
    double la = luminance(a);
    double lb = luminance(b);
    return (Math.max(la, lb) + 0.05) / (Math.min(la, lb) + 0.05);
  }

  private static double luminance(double[] rgb) {
    double[] weights = {0.2126, 0.7152, 0.0722};
    double sum = 0;
    for (int i = 0; i < 3; i++) {
      double c = rgb[i];
      sum += weights[i] * (c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4));
    }
    return sum;
  }
}
