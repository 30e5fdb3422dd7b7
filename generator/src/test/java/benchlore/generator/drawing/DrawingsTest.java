package benchlore.generator.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.generator.drawing.bit.Bits;
import benchlore.generator.drawing.bit.SampleBits;
import benchlore.generator.drawing.joint.JointDrawing;
import benchlore.generator.drawing.joint.JointForm;
import benchlore.generator.drawing.joint.SampleJoints;
import benchlore.generator.drawing.surface.BoardCut;
import benchlore.generator.drawing.surface.SheenSwatch;
import benchlore.generator.drawing.surface.Surfaces;
import benchlore.generator.drawing.svg.SvgReading;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;

/** What must hold for every drawing as text. */
class DrawingsTest {
  private static final Pattern TOO_FINE = Pattern.compile("[0-9]\\.[0-9]{3}");
  private static final Map<String, String> DRAWINGS = drawings();

  private static Map<String, String> drawings() {
    Map<String, String> all = new LinkedHashMap<>();
    SampleBits.all()
        .forEach(
            (name, bit) -> {
              all.put("bit " + name, Bits.bit(bit, "A <bit> & more", "p"));
              all.put("cut " + name, Bits.cut(bit, "A cut", "p"));
            });
    for (BoardCut cut : BoardCut.values()) {
      all.put("grain " + cut.word(), Surfaces.board(cut, "Grain", "p"));
    }
    for (double micron : new double[] {1, 10, 35, 125, 425, 2000}) {
      all.put("grit " + micron, Surfaces.grit(micron, "Grit", "p"));
    }
    for (JointForm form : JointForm.values()) {
      all.put(form.word(), JointDrawing.draw(form, SampleJoints.sizes(form), "A joint", "p"));
    }
    all.put("sheen", Surfaces.sheen(new SheenSwatch(0, 5, false), "Dull", "p"));
    all.put("mirror", Surfaces.sheen(new SheenSwatch(90, 100, false), "Mirror", "p"));
    all.put("rubbed", Surfaces.sheen(new SheenSwatch(20, 35, true), "Rubbed", "p"));
    return all;
  }

  static Stream<String> names() {
    return DRAWINGS.keySet().stream();
  }

  @ParameterizedTest
  @MethodSource("names")
  void isNamedAndDescribed(String name) {
    SvgReading svg = SvgReading.of(DRAWINGS.get(name));
    Element root = svg.elements("svg").get(0);
    assertEquals("img", root.getAttribute("role"));
    assertEquals("p-t p-d", root.getAttribute("aria-labelledby"));
    assertEquals("p-t", svg.elements("title").get(0).getAttribute("id"));
    assertTrue(svg.elements("desc").get(0).getTextContent().length() > 40);
  }

  @ParameterizedTest
  @MethodSource("names")
  void idsAreUniqueAndPrefixed(String name) {
    SvgReading svg = SvgReading.of(DRAWINGS.get(name));
    Set<String> ids = new HashSet<>();
    for (Element element : svg.elements("*")) {
      String id = element.getAttribute("id");
      assertTrue(id.isEmpty() || (id.startsWith("p-") && ids.add(id)), id);
      assertFalse(element.hasAttribute("style"));
      assertFalse(element.hasAttribute("stroke"));
      String fill = element.getAttribute("fill");
      assertTrue(fill.isEmpty() || fill.startsWith("url(#p-"), fill);
    }
    assertTrue(svg.elements("style").isEmpty());
  }

  @ParameterizedTest
  @MethodSource("names")
  void isLightEnoughForAPage(String name) {
    assertTrue(DRAWINGS.get(name).length() < 45_000, () -> "" + DRAWINGS.get(name).length());
  }

  @ParameterizedTest
  @MethodSource("names")
  void numbersAreShort(String name) {
    String text = DRAWINGS.get(name);
    assertFalse(TOO_FINE.matcher(text.replaceAll("data-imperial=\"[^\"]*\"", "")).find());
    assertFalse(text.contains("not a number") || text.contains("NaN"));
  }

  @ParameterizedTest
  @MethodSource("names")
  void textsStayApartAndInside(String name) {
    SvgReading svg = SvgReading.of(DRAWINGS.get(name));
    assertFalse(svg.texts().isEmpty());
    svg.checkTexts(name);
  }

  @Test
  void figuresCarryWhatAReaderOfInchesReads() {
    String svg = DRAWINGS.get("bit round-over");
    assertTrue(svg.matches("(?s).*data-imperial=\"3/8\u00a0in\"[^>]*>9.5 mm</text>.*"), svg);
    assertTrue(
        DRAWINGS
            .get("bit v")
            .matches("(?s).*<text class=\"dim drw-text drw-value\" text-[^>]*>90°</text>.*"));
  }

  @Test
  void descriptionsSayTheSizes() {
    String words =
        SvgReading.of(DRAWINGS.get("bit round-over")).elements("desc").get(0).getTextContent();
    assertEquals(
        "Round-over bit from the side, shank up: cutting diameter 31.75 mm, cutting length 13 mm,"
            + " radius 9.5 mm, shank 12.7 mm, bearing at the tip, 12.7 mm across, 2 straight flutes."
            + " The cutting edge is a hollow quarter circle.",
        words);
  }

  @Test
  void localeDoesNotMatter() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.GERMANY);
      assertEquals(DRAWINGS, drawings());
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void glyphsAreSmallHiddenAndWithoutIds() {
    SampleBits.all()
        .forEach(
            (name, bit) -> {
              String glyph = Bits.glyph(bit);
              SvgReading svg = SvgReading.of(glyph);
              assertEquals("true", svg.elements("svg").get(0).getAttribute("aria-hidden"), name);
              assertEquals(48, svg.viewBox()[2]);
              assertFalse(glyph.contains(" id="), name);
              assertTrue(glyph.length() < 6000, name + " " + glyph.length());
            });
  }
}
