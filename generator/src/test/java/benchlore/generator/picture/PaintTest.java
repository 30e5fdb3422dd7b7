package benchlore.generator.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * A file also carries the paint of its looks, for the eye of a drawing program; the site drops it.
 * So that a file never looks other than the site, it is that of the style sheet on a bright screen.
 */
class PaintTest {
  private static final List<String> PAINT = List.of("fill", "stroke");
  private static final Pattern RULE = Pattern.compile("(?m)^([.:][^{}@]*)\\{([^{}]*)\\}");
  private static final Pattern DECLARATION = Pattern.compile("([a-z-]+):\\s*([^;]+);");

  private static final Map<String, String> COLOURS = new HashMap<>();
  private static final Map<String, Map<String, String>> LOOKS = new TreeMap<>();

  @BeforeAll
  static void readTheStyleSheet() throws IOException {
    String css = Files.readString(Path.of("..", "site-template", "css", "drawing.css"));
    for (MatchResult rule : RULE.matcher(css).results().toList()) {
      for (String selector : rule.group(1).split(",", -1)) {
        String name = selector.strip().replaceAll("^\\.drw (?=\\.drw-)", "");
        for (MatchResult said : DECLARATION.matcher(rule.group(2)).results().toList()) {
          if (name.equals(":root")) {
            COLOURS.put("var(" + said.group(1) + ")", said.group(2));
          } else if (name.matches("\\.drw-[a-z-]+") && PAINT.contains(said.group(1))) {
            LOOKS
                .computeIfAbsent(name.substring(1), n -> new HashMap<>())
                .put(said.group(1), said.group(2));
          }
        }
      }
    }
  }

  @Test
  void theFilesShowTheColoursOfTheStyleSheet() throws IOException {
    List<String> wrong = new ArrayList<>();
    for (String folder : List.of("tools", "sketches", "faults")) {
      try (var files = Files.list(LoadedPictures.CONTENT.resolve("drawings").resolve(folder))) {
        for (Path file : files.sorted().toList()) {
          Element root =
              PictureFile.parse(file.toString(), Files.readAllBytes(file)).value().orElseThrow();
          check(root, Map.of(), wrong);
        }
      }
    }
    assertEquals(List.of(), wrong);
  }

  private static void check(Element element, Map<String, String> outer, List<String> wrong) {
    Map<String, String> paint = new HashMap<>(outer);
    PAINT.stream()
        .filter(p -> !element.value(p).isEmpty())
        .forEach(p -> paint.put(p, element.value(p)));
    for (String look : element.looks()) {
      for (String property : PAINT) {
        String meant = meant(element, property);
        // The head of an arrow takes the colour of its line.
        if (!look.equals("drw-arrow") && !meant.equals(paint.getOrDefault(property, "none"))) {
          wrong.add(element.place() + " " + look + ": " + property + " is not " + meant);
        }
      }
    }
    element.children().forEach(child -> check(child, paint, wrong));
  }

  private static String meant(Element element, String property) {
    String meant = "none";
    List<String> looks = new ArrayList<>(element.looks());
    // It stands after the others and takes their outline away.
    if (looks.remove("drw-plain")) {
      looks.add("drw-plain");
    }
    for (String look : looks) {
      meant = LOOKS.getOrDefault(look, Map.of()).getOrDefault(property, meant);
    }
    return COLOURS.getOrDefault(meant, meant);
  }
}
