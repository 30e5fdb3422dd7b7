package benchlore.generator.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.generator.content.LoadResult;
import benchlore.generator.content.Problem;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whatever is done to a file, its problems are values with a place in it, never an exception. */
class BrokenPicturesTest {
  private static final String[] PIECES = {
    "",
    "<",
    ">",
    "\"",
    "&",
    "-",
    "NaN",
    "1e999",
    "<g>",
    "</g>",
    "<!-- - -->",
    " x=\"4 mm\"",
    "é",
    " transform=\"scale(0)\"",
    "<text/>",
    "<rect/>",
    "Z",
    "<![CDATA[ < ]]>",
    "<?x y?>"
  };

  @ParameterizedTest
  @CsvSource({"tools,dovetail-saw", "tools,long-saw-of-none", "sketches,oily-rags", "faults,twist"})
  void noMistakeIsAnException(String folder, String name) throws IOException {
    var file = LoadedPictures.CONTENT.resolve("drawings/" + folder + "/" + name + ".svg");
    String sound =
        Files.exists(file)
            ? Files.readString(file)
            : "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 1 1\"><title>a</title></svg>";
    Random random = new Random(7);
    int refused = 0;
    for (int i = 0; i < 400; i++) {
      int from = random.nextInt(sound.length());
      int to = Math.min(sound.length(), from + random.nextInt(12));
      String piece = PIECES[random.nextInt(PIECES.length)];
      String broken = sound.substring(0, from) + piece + sound.substring(to);
      List<Problem> problems = problems(folder, name, broken);
      for (Problem problem : problems) {
        int line = problem.place().line();
        assertTrue(line >= 1 && line <= broken.lines().count() + 1, problem.toString());
        assertTrue(problem.place().column() >= 1, problem.toString());
      }
      refused += problems.isEmpty() ? 0 : 1;
    }
    assertTrue(refused > 50, "only " + refused + " were refused");
  }

  private static List<Problem> problems(String folder, String name, String svg) {
    LoadResult<Element> root = PictureFile.parse("x.svg", svg.getBytes(StandardCharsets.UTF_8));
    if (root.value().isEmpty()) {
      return root.problems();
    }
    if (folder.equals("tools")) {
      return ToolRules.problems(root.value().get(), LoadedPictures.LIBRARY.find(name));
    }
    List<Problem> problems = SketchRules.sketch(root.value().get());
    if (problems.isEmpty()) {
      assertTrue(Sketch.of(root.value().get()).page("a", "p").endsWith("</svg>"));
    }
    return problems;
  }

  @Test
  void aPlaceIsThatOfTheTagWhateverStandsBeforeIt() {
    String svg =
        """
        <?xml version="1.0"?>
        <!-- <rect class="x"/> -->
        <s:svg xmlns:s="http://www.w3.org/2000/svg" viewBox="0 0 320 9">
          <s:title>a &gt; b</s:title><s:desc><![CDATA[<rect/>]]></s:desc>
          <s:g><s:rect
             class="drw-wool" width="1" height="1"/></s:g>
        </s:svg>
        """;
    List<Problem> problems = problems("sketches", "x", svg);
    assertEquals(1, problems.size(), problems.toString());
    assertEquals("x.svg:6:6", problems.get(0).place().toString());
  }

  @Test
  void whatADrawingProgramNotesForItselfIsPassedOver() {
    String svg =
        """
        <svg xmlns="http://www.w3.org/2000/svg" xmlns:p="https://example.org/program"
             viewBox="0 0 320 9" p:version="1">
          <title>a</title><desc>b</desc>
          <metadata><p:work>c</p:work></metadata>
          <p:view zoom="2"><p:grid/></p:view>
          <path class="drw-thin" p:nodes="cc" stroke="#f00" d="M1 1 h 4"/>
        </svg>
        """;
    assertEquals(List.of(), problems("sketches", "x", svg));
    Element root =
        PictureFile.parse("x.svg", svg.getBytes(StandardCharsets.UTF_8)).value().orElseThrow();
    assertTrue(
        Sketch.of(root).page("a", "p").endsWith("<path class=\"drw-thin\" d=\"M1 1h4\"/></svg>"));
  }
}
