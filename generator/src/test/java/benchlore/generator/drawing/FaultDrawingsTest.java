package benchlore.generator.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

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
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;

/**
 * Pictures of faults: well formed, named, inside their frame, small, and each unlike the others.
 */
class FaultDrawingsTest {
  private static final int MOST_BYTES = 30_000;
  private static final Pattern TOO_FINE = Pattern.compile("[0-9]\\.[0-9]{3}");

  static Stream<String> names() {
    return StreamSupport.stream(FaultDrawing.names().spliterator(), false);
  }

  private static String titled(String name) {
    return Drawings.fault(name, "A <fault> & more", "What the picture shows", "p").orElseThrow();
  }

  @ParameterizedTest
  @MethodSource("names")
  void isNamedDescribedAndAlwaysTheSame(String name) {
    SvgReading svg = SvgReading.of(titled(name));
    Element root = svg.elements("svg").get(0);
    assertEquals("p-t p-d", root.getAttribute("aria-labelledby"));
    assertEquals("A <fault> & more", svg.elements("title").get(0).getTextContent());
    assertEquals("What the picture shows", svg.elements("desc").get(0).getTextContent());
    assertEquals(titled(name), titled(name));
    assertFalse(TOO_FINE.matcher(titled(name)).find(), name);
  }

  @ParameterizedTest
  @MethodSource("names")
  void smallOneIsHiddenFromScreenReadersAndHasMarksOnItsGround(String name) {
    String small = Drawings.faultGlyph(name).orElseThrow();
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
            assertTrue(at >= 0 && at <= FaultCanvas.SIDE, name + ": " + shape.getAttribute("d"));
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
      String small = Drawings.faultGlyph(name).orElseThrow();
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

  @Test
  void aNameThatIsNotDrawnGivesNone() {
    assertTrue(Drawings.fault("no-such-fault", "x", "x", "p").isEmpty());
    assertTrue(Drawings.faultGlyph("no-such-fault").isEmpty());
  }
}
