package benchlore.generator.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.generator.content.Library;
import benchlore.generator.content.LibraryLoader;
import benchlore.generator.content.LoadResult;
import benchlore.generator.planning.ToolDrawing;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Element;

/** What must hold for every tool's drawing, and how forms become lines. */
final class SilhouettesTest {
  private static final Path CONTENT = Path.of("..", "content");
  private static final Pattern PLACE = Pattern.compile("(-?[0-9.]+) (-?[0-9.]+)");
  private static final Set<String> NO_DRAWING =
      Set.of("svg", "title", "desc", "path", "rect", "text");

  private static Map<String, ToolDrawing> drawings;

  @BeforeAll
  static void load() throws IOException {
    LoadResult<Library> library = LibraryLoader.load(CONTENT);
    assertEquals(List.of(), library.problems());
    LoadResult<Map<String, ToolDrawing>> loaded =
        ToolDrawing.load(CONTENT, library.value().orElseThrow());
    assertEquals(List.of(), loaded.problems());
    drawings = loaded.value().orElseThrow();
    assertFalse(drawings.isEmpty());
  }

  @Test
  void everyDrawingLiesInsideItsBox() {
    drawings.forEach(
        (id, tool) -> {
          assertInside(id, Drawings.tool(tool.silhouette(), "A tool", "p"));
          assertInside(id + ", small", Drawings.glyph(tool.silhouette()));
        });
  }

  /** A curve lies within the hull of its places and control points. */
  private static void assertInside(String name, String svg) {
    SvgReading reading = SvgReading.of(svg);
    double[] view = reading.viewBox();
    int places = 0;
    for (Element path : reading.elements("path")) {
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

  @Test
  void wordsStayApartAndInside() {
    drawings.forEach(
        (id, tool) -> SvgReading.of(Drawings.tool(tool.silhouette(), "A", "p")).checkTexts(id));
  }

  @Test
  void looksComeFromClassesAlone() {
    drawings.forEach(
        (id, tool) -> {
          String full = Drawings.tool(tool.silhouette(), "A tool", "p");
          String glyph = Drawings.glyph(tool.silhouette());
          for (String svg : List.of(full, glyph)) {
            for (Element element : SvgReading.of(svg).elements("*")) {
              assertTrue(NO_DRAWING.contains(element.getTagName()), id + element.getTagName());
              assertFalse(element.hasAttribute("style") || element.hasAttribute("fill"), id);
              assertFalse(element.hasAttribute("stroke"), id);
            }
          }
          assertTrue(full.length() < 45_000, id + " " + full.length());
          assertTrue(glyph.length() < 9_000, id + ", small " + glyph.length());
          assertFalse(glyph.contains(" id="), id);
        });
  }

  @Test
  void everyDrawingSaysWhatItShows() {
    drawings.forEach(
        (id, tool) -> {
          SvgReading svg = SvgReading.of(Drawings.tool(tool.silhouette(), "A tool", "p"));
          assertTrue(svg.elements("title").get(0).getTextContent().startsWith("A tool, from"), id);
          String words = svg.elements("desc").get(0).getTextContent();
          assertTrue(words.startsWith(tool.silhouette().says()), id);
        });
  }

  @Test
  void everyMaterialHasItsColour() throws IOException {
    String css = java.nio.file.Files.readString(Path.of("..", "site-template/css/drawing.css"));
    List<String> bare = new ArrayList<>();
    for (Material material : Material.values()) {
      if (!css.contains("." + material.css() + " {")) {
        bare.add(material.css());
      }
    }
    assertEquals(List.of(), bare);
  }

  @ParameterizedTest
  @CsvSource({"0, M0 0L10 0L10 -10L0 -10Z", "20, M5 0"})
  void roundingNeverTakesMoreThanHalfAnEdge(double radius, String start) {
    Shape rect = Shape.rect(new Point(0, 0), new Point(10, 10), radius);
    Trace trace = rect.ink(1).areas().get(0);
    String d = trace.path(Affine.page(1, new Point(0, 0), new Point(0, 0)));
    assertTrue(d.startsWith(radius > 0 ? start : "M0 0"), d);
    Box box = trace.box();
    assertEquals(10, box.wide(), 1e-6);
    assertEquals(10, box.high(), 1e-6);
  }

  @Test
  void aRoundedCornerIsAnArc() {
    Trace trace = Shape.rect(new Point(0, 0), new Point(10, 10), 5).ink(1).areas().get(0);
    Point start = trace.from();
    for (Trace.Piece piece : trace.pieces()) {
      for (double t = 0.1; t < 1 && !piece.straight(); t += 0.2) {
        assertEquals(5, piece.at(start, t).distance(new Point(5, 5)), 0.01);
      }
      start = piece.to();
    }
  }

  @Test
  void smoothRunsStraightFromCornerToCornerAndThroughEveryKnot() {
    List<Knot> knots =
        List.of(
            new Knot(new Point(0, 0), false, 0),
            new Knot(new Point(10, 0), false, 0),
            new Knot(new Point(12, 6), true, 0),
            new Knot(new Point(5, 9), true, 0));
    Trace trace = Outlines.smooth(knots, true);
    assertTrue(trace.pieces().get(0).straight());
    assertEquals(4, trace.pieces().size());
    for (int i = 0; i < 4; i++) {
      assertEquals(knots.get((i + 1) % 4).at(), trace.pieces().get(i).to());
    }
    // At a smooth knot the line before and the line after are one.
    Trace.Piece in = trace.pieces().get(1);
    Trace.Piece out = trace.pieces().get(2);
    Point before = Outlines.direction(in.second(), in.to());
    Point after = Outlines.direction(in.to(), out.first());
    assertEquals(1, before.x() * after.x() + before.z() * after.z(), 1e-9);
  }

  @Test
  void aHalfOutlineOnTheAxisIsMadeWhole() {
    List<Knot> half =
        List.of(
            new Knot(new Point(0, 5), false, 0),
            new Knot(new Point(4, 5), false, 0),
            new Knot(new Point(3, 0), true, 0),
            new Knot(new Point(0, -2), false, 0));
    List<Knot> whole = Knot.joined(half, Mirror.LEFT_RIGHT);
    assertEquals(6, whole.size());
    assertEquals(new Point(-3, 0), whole.get(4).at());
    assertEquals(List.of(), Knot.joined(half, Mirror.UP_DOWN));
  }

  @Test
  void aBarKeepsItsThicknessRoundABend() {
    List<Knot> along =
        List.of(
            new Knot(new Point(0, 0), false, 0),
            new Knot(new Point(20, 0), false, 6),
            new Knot(new Point(20, 20), false, 0));
    Box box = Outlines.bar(along, 4).box();
    assertEquals(22, box.wide(), 1e-6);
    assertEquals(22, box.high(), 1e-6);
  }

  @Test
  void teethAreCoarserOnlyWhereTheyCouldNotBeSeen() {
    Shape teeth = Shape.teeth(List.of(new Point(0, 0), new Point(100, 0)), 4, 2, 1);
    assertEquals(50, teeth.ink(10).strokes().get(0).pieces().size());
    assertEquals(-2, teeth.ink(10).strokes().get(0).box().z0(), 1e-9);
    assertTrue(teeth.ink(0.1).strokes().get(0).pieces().size() < 10);
  }

  @Test
  void theSmallPictureSaysItsScale() {
    Shape rod = Shape.rect(new Point(0, 0), new Point(430, 40), 0);
    Silhouette.Part part = new Silhouette.Part(Material.METAL, rod, Optional.empty(), false, false);
    for (boolean level : new boolean[] {true, false}) {
      Silhouette tool =
          new Silhouette(
              Silhouette.View.SIDE, "A rod.", level, 430, 40, List.of(part), List.of(), List.of());
      // 43 of 48 units hold the rod, lying level or at 45 degrees.
      double held = level ? 430 : 470 / Math.sqrt(2);
      assertEquals(48 * held / 43, Drawings.glyphSideMm(tool), 1e-9);
    }
  }

  @Test
  void whatStandsAsideIsNotPartOfTheSize() {
    Shape block = Shape.rect(new Point(0, 0), new Point(10, 10), 0);
    List<Silhouette.Part> parts =
        List.of(
            new Silhouette.Part(Material.WOOD, block, Optional.empty(), false, false),
            new Silhouette.Part(Material.WOOD, block.shifted(20, 5), Optional.empty(), true, true));
    Silhouette tool =
        new Silhouette(
            Silhouette.View.SIDE, "A block.", false, 10, 10, parts, List.of(), List.of());
    assertEquals(10, tool.drawnWide(), 1e-9);
    assertEquals(10, tool.drawnHigh(), 1e-9);
    assertEquals(30, tool.box().wide(), 1e-9);
  }

  @Test
  void hatchKeepsToItsField() {
    List<Point> field = List.of(new Point(0, 0), new Point(10, 0), new Point(5, 8));
    for (Trace line : Shape.hatch(field, 1, 30, true).ink(10).strokes()) {
      Box box = line.box();
      assertTrue(box.x0() >= -1e-9 && box.x1() <= 10 && box.z0() >= -1e-9 && box.z1() <= 8);
      assertTrue(box.z1() <= 1.6 * Math.min(box.x1(), 10 - box.x0()) + 8, box.toString());
    }
  }

  @Test
  void aTurnIsAnticlockwiseAndAPageRunsDown() {
    Affine quarter = Affine.turn(90, new Point(1, 1));
    assertEquals(1, quarter.of(new Point(2, 1)).x(), 1e-9);
    assertEquals(2, quarter.of(new Point(2, 1)).z(), 1e-9);
    Affine both = quarter.then(Affine.page(2, new Point(1, 1), new Point(50, 50)));
    assertEquals(48, both.of(new Point(2, 1)).z(), 1e-9);
  }
}
