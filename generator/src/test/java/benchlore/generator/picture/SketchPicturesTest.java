package benchlore.generator.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.generator.drawing.svg.SvgReading;
import java.util.HashSet;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;

/** What must hold for every sketch as it stands on a page. */
class SketchPicturesTest {
  private static final Pattern TOO_FINE = Pattern.compile("[0-9]\\.[0-9]{3}");

  static Stream<String> names() {
    return LoadedPictures.PICTURES.sketches().keySet().stream();
  }

  private static String page(String name) {
    return LoadedPictures.PICTURES.sketches().get(name).page("How <this> & that", "p");
  }

  @ParameterizedTest
  @MethodSource("names")
  void isNamedAndDescribed(String name) {
    SvgReading svg = SvgReading.of(page(name));
    Element root = svg.elements("svg").get(0);
    assertEquals("img", root.getAttribute("role"));
    assertEquals("p-t p-d", root.getAttribute("aria-labelledby"));
    assertEquals("p-t", svg.elements("title").get(0).getAttribute("id"));
    assertEquals("How <this> & that", svg.elements("title").get(0).getTextContent());
    assertTrue(svg.elements("desc").get(0).getTextContent().length() > 40);
  }

  @ParameterizedTest
  @MethodSource("names")
  void idsAreUniqueAndPrefixedAndLooksComeFromClassesAlone(String name) {
    SvgReading svg = SvgReading.of(page(name));
    Set<String> ids = new HashSet<>();
    for (Element element : svg.elements("*")) {
      String id = element.getAttribute("id");
      assertTrue(id.isEmpty() || (id.startsWith("p-") && ids.add(id)), id);
      assertFalse(element.hasAttribute("style") || element.hasAttribute("fill"), name);
      assertFalse(element.hasAttribute("stroke") || element.hasAttribute("stroke-width"), name);
      String clip = element.getAttribute("clip-path");
      assertTrue(clip.isEmpty() || clip.startsWith("url(#p-"), clip);
    }
    assertTrue(svg.elements("style").isEmpty());
  }

  @ParameterizedTest
  @MethodSource("names")
  void isLightAndItsNumbersAreShort(String name) {
    String svg = page(name);
    assertTrue(svg.length() < 45_000, () -> "" + svg.length());
    assertFalse(TOO_FINE.matcher(svg.replaceAll("data-imperial=\"[^\"]*\"", "")).find(), name);
  }

  @ParameterizedTest
  @MethodSource("names")
  void textsStayApartAndInside(String name) {
    SvgReading svg = SvgReading.of(page(name));
    assertFalse(svg.texts().isEmpty());
    svg.checkTexts(name);
  }

  /** Under each pad the pressure spreads as far to each side as it goes down. */
  @Test
  void clampingPressureSpreadsAt45Degrees() {
    int cones = 0;
    for (Element path : SvgReading.of(page("clamp-pressure")).elements("path")) {
      if (path.getAttribute("class").equals("drw-cone")) {
        Matcher n = Pattern.compile("-?[0-9.]+").matcher(path.getAttribute("d"));
        double[] at = n.results().mapToDouble(m -> Double.parseDouble(m.group())).toArray();
        assertEquals(8, at.length, path.getAttribute("d"));
        double down = at[5] - at[1];
        assertEquals(down, at[4] - at[2], 0.011);
        assertEquals(down, at[0] - at[6], 0.011);
        cones++;
      }
    }
    assertTrue(cones >= 2, "" + cones);
  }
}
