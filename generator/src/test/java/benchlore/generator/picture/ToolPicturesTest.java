package benchlore.generator.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.generator.drawing.svg.SvgReading;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What must hold for every tool's picture. */
class ToolPicturesTest {
  private static final Pattern PLACE = Pattern.compile("(-?[0-9.]+) (-?[0-9.]+)");
  private static final Set<String> NO_DRAWING =
      Set.of("svg", "title", "desc", "path", "rect", "text");

  static Stream<String> ids() {
    return LoadedPictures.PICTURES.tools().keySet().stream();
  }

  private static ToolPicture tool(String id) {
    return LoadedPictures.PICTURES.tools().get(id);
  }

  private static String page(String id) {
    return tool(id).page("p", 100, 50);
  }

  @ParameterizedTest
  @MethodSource("ids")
  void everyDrawingLiesInsideItsBox(String id) {
    assertInside(id, page(id));
    assertInside(id + ", small", tool(id).small());
  }

  /** A curve lies within the hull of its places and control points. */
  private static void assertInside(String name, String svg) {
    SvgReading reading = SvgReading.of(svg);
    double[] view = reading.viewBox();
    int places = 0;
    for (org.w3c.dom.Element path : reading.elements("path")) {
      Matcher place = PLACE.matcher(path.getAttribute("d"));
      while (place.find()) {
        double x = Double.parseDouble(place.group(1));
        double y = Double.parseDouble(place.group(2));
        assertTrue(x >= 0 && x <= view[2] && y >= 0 && y <= view[3], name + ": " + x + " " + y);
        places++;
      }
    }
    assertTrue(places > 4, name);
  }

  @ParameterizedTest
  @MethodSource("ids")
  void wordsStayApartAndInside(String id) {
    SvgReading.of(page(id)).checkTexts(id);
  }

  @ParameterizedTest
  @MethodSource("ids")
  void looksComeFromClassesAlone(String id) {
    String full = page(id);
    String small = tool(id).small();
    for (String svg : List.of(full, small)) {
      for (org.w3c.dom.Element element : SvgReading.of(svg).elements("*")) {
        assertTrue(NO_DRAWING.contains(element.getTagName()), id + element.getTagName());
        assertFalse(element.hasAttribute("style") || element.hasAttribute("fill"), id);
        assertFalse(element.hasAttribute("stroke"), id);
      }
    }
    assertTrue(full.length() < 45_000, id + " " + full.length());
    assertTrue(small.length() < 9_000, id + ", small " + small.length());
    assertFalse(small.contains(" id="), id);
  }

  @ParameterizedTest
  @MethodSource("ids")
  void everyDrawingSaysWhatItShows(String id) {
    SvgReading svg = SvgReading.of(page(id));
    String title = svg.elements("title").get(0).getTextContent();
    String record = LoadedPictures.LIBRARY.find(id).orElseThrow().title();
    assertTrue(title.startsWith(record + ", from"), title);
    String words = svg.elements("desc").get(0).getTextContent();
    assertTrue(tool(id).says().length() >= 40, id);
    assertTrue(
        words.startsWith(tool(id).says() + " About 100 mm wide and 50 mm high as drawn."), words);
  }

  @Test
  void theSmallPictureSaysItsScale() {
    String rod = "<rect class=\"drw-iron\" x=\"0\" y=\"0\" width=\"430\" height=\"40\"/>";
    for (boolean level : new boolean[] {true, false}) {
      String frame = "viewBox=\"0 0 430 40\"" + (level ? " data-level=\"true\"" : "");
      // 43 of 48 units hold the rod, lying level or at 45 degrees.
      double held = level ? 430 : 470 / Math.sqrt(2);
      ToolPicture tool = ToolPicture.of(LoadedPictures.root(frame, rod));
      assertEquals(48 * held / 43, tool.sideMm(), 1e-9);
    }
  }

  private static final String BLOCK = "<rect class=\"drw-wood\" width=\"10\" height=\"10\"";

  @Test
  void whatStandsAsideIsNotPartOfTheSize() {
    ToolPicture tool =
        ToolPicture.of(
            LoadedPictures.root(
                "viewBox=\"0 0 30 15\"",
                BLOCK + "/><g data-aside=\"true\">" + BLOCK + " x=\"20\" y=\"5\"/></g>"));
    assertEquals(10, tool.itself().orElseThrow().wide(), 1e-9);
    assertEquals(10, tool.itself().orElseThrow().high(), 1e-9);
    assertEquals(30, tool.all().orElseThrow().wide(), 1e-9);
  }

  @Test
  void theSmallPictureLeavesOutWhatIsFineAndShowsWhatStandsForIt() {
    String marks =
        BLOCK
            + "/><path class=\"drw-thin\" d=\"M1 1h8\"/>"
            + "<path class=\"drw-thin\" data-small=\"yes\" d=\"M1 2h8\"/>"
            + "<path class=\"drw-teeth\" data-small=\"no\" d=\"M1 3h8\"/>"
            + "<path class=\"drw-brass\" data-small=\"only\" d=\"M1 4h8v1z\"/>"
            + "<path class=\"drw-move\" d=\"M1 5h8\"/>";
    ToolPicture tool = ToolPicture.of(LoadedPictures.root("viewBox=\"0 0 10 10\"", marks));
    assertEquals(List.of("drw-wood", "drw-thin", "drw-brass"), looks(tool.small()));
    assertEquals(
        List.of("drw-wood", "drw-thin", "drw-thin", "drw-teeth", "drw-move", "drw-arrow"),
        looks(tool.page("p", 10, 10)));
  }

  private static List<String> looks(String svg) {
    return SvgReading.of(svg).elements("path").stream()
        .map(path -> path.getAttribute("class"))
        .toList();
  }

  @Test
  void groupsMayBeMovedAndTurnedAndTheirWordsWithThem() {
    String marks =
        "<g transform=\"translate(100, 50) rotate(90)\">"
            + BLOCK
            + " x=\"5\"/><text class=\"drw-text\" x=\"5\" y=\"0\">a <tspan>corner</tspan></text></g>";
    Element root = LoadedPictures.root("viewBox=\"90 50 10 20\"", marks);
    ToolPicture tool = ToolPicture.of(root);
    assertEquals(90, tool.itself().orElseThrow().x0(), 1e-9);
    assertEquals(55, tool.itself().orElseThrow().z0(), 1e-9);
    Callout callout = Callout.of(root).get(0);
    assertEquals("a corner", callout.text());
    assertEquals(100, callout.at().x(), 1e-9);
    assertEquals(55, callout.at().z(), 1e-9);
  }
}
