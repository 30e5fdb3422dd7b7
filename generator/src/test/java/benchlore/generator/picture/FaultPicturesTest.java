package benchlore.generator.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.generator.drawing.svg.SvgReading;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;

/**
 * Pictures of faults: well formed, named, inside their frame, small, and each unlike the others.
 */
class FaultPicturesTest {
  private static final int MOST_BYTES = 30_000;
  private static final Pattern TOO_FINE = Pattern.compile("[0-9]\\.[0-9]{3}");

  static Stream<String> names() {
    return LoadedPictures.PICTURES.faults().keySet().stream();
  }

  private static String titled(String name) {
    return LoadedPictures.PICTURES.faults().get(name).page("A <fault> & more", "p");
  }

  @ParameterizedTest
  @MethodSource("names")
  void isNamedDescribedAndAlwaysTheSame(String name) {
    SvgReading svg = SvgReading.of(titled(name));
    Element root = svg.elements("svg").get(0);
    assertEquals("p-t p-d", root.getAttribute("aria-labelledby"));
    assertEquals("A <fault> & more", svg.elements("title").get(0).getTextContent());
    assertTrue(svg.elements("desc").get(0).getTextContent().length() > 40, name);
    assertEquals(titled(name), titled(name));
    assertFalse(TOO_FINE.matcher(titled(name)).find(), name);
  }

  @ParameterizedTest
  @MethodSource("names")
  void smallOneIsHiddenFromScreenReadersAndHasMarksOnItsGround(String name) {
    String small = LoadedPictures.PICTURES.faults().get(name).small();
    SvgReading svg = SvgReading.of(small);
    assertEquals("true", svg.elements("svg").get(0).getAttribute("aria-hidden"));
    assertTrue(svg.elements("path").size() + svg.elements("circle").size() >= 3, name);
    assertTrue(small.length() < MOST_BYTES, name + " has " + small.length());
  }

  @ParameterizedTest
  @MethodSource("names")
  void whateverIsNotClippedStaysInsideTheFrame(String name) {
    SvgReading svg = SvgReading.of(titled(name));
    for (Element shape : svg.elements("path")) {
      if (shape.getParentNode().getNodeName().equals("svg")) {
        Matcher absolute = Pattern.compile("[MLQT](-?[0-9.]+) (-?[0-9.]+)").matcher("");
        absolute.reset(shape.getAttribute("d"));
        while (absolute.find()) {
          for (int i = 1; i <= 2; i++) {
            double at = Double.parseDouble(absolute.group(i));
            assertTrue(at >= 0 && at <= 96, name + ": " + shape.getAttribute("d"));
          }
        }
      }
    }
  }

  @Test
  void noTwoAreAlikeAndEveryLookIsInTheStyleSheet() throws IOException {
    String css = Files.readString(Path.of("..", "site-template", "css", "drawing.css"));
    Map<String, String> seen = new HashMap<>();
    Set<String> unknown = new TreeSet<>();
    for (String name : names().toList()) {
      String small = LoadedPictures.PICTURES.faults().get(name).small();
      assertEquals(null, seen.put(small, name), name + " looks like another");
      Matcher look = Pattern.compile("class=\"([^\"]+)\"").matcher(small);
      while (look.find()) {
        for (String one : look.group(1).split(" ", -1)) {
          if (!css.contains("." + one + " ") && !css.contains("." + one + ",")) {
            unknown.add(one);
          }
        }
      }
    }
    assertEquals(Set.of(), unknown);
  }
}
