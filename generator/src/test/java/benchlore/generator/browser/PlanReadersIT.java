package benchlore.generator.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.generator.content.LibraryLoader;
import benchlore.generator.content.LoadResult;
import benchlore.generator.export.PlanJson;
import benchlore.generator.planning.Content;
import benchlore.generator.planning.Planned;
import benchlore.generator.planning.Plans;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/**
 * A plan file opened in the page is taken whole or changes nothing. Page and command line read it
 * with the same code; {@code PlanFileFormsTest} holds that to the schema.
 */
class PlanReadersIT {
  private static final Path CONTENT = Path.of("../content");
  private static final Path FILES = Path.of("src/test/resources/plan-files");
  private static final String PAGE = "planner/finish.html";
  private static final String OPEN =
      """
      const read = window.benchlore.saved.fromYaml(arguments[0]);
      return !read.problem && window.benchlore.project.take(read.file)""";
  private static final String STATE =
      """
      const now = window.benchlore.project.current();
      return JSON.stringify([now.file, now.request, window.location.hash,
        document.getElementById('f-title').value, document.getElementById('answer').innerText])""";
  private static final String REQUEST =
      "return JSON.stringify(window.benchlore.project.current().request)";

  private static final SiteFolder site = SiteFolder.fromBuild();
  @RegisterExtension static final Browser browser = Browser.watching(site);
  private static Content content;
  @TempDir Path folder;

  @BeforeAll
  static void loadContent() throws IOException {
    content = Content.load(CONTENT).value().orElseThrow();
  }

  @BeforeEach
  void openThePage() {
    browser.open("about:blank");
    browser.open(site.address(PAGE));
  }

  @Test
  void aBadFileIsRefusedAndChangesNothing() throws IOException {
    String before = (String) browser.script(STATE);
    List<String> wrong = new ArrayList<>();
    for (Path file : files("bad")) {
      String text = Files.readString(file);
      if (Boolean.TRUE.equals(browser.script(OPEN, text))) {
        wrong.add("the page accepts " + file.getFileName());
        openThePage();
      } else if (!browser.text("#plan-tell").contains("nothing was changed")) {
        wrong.add("the page does not tell of " + file.getFileName());
      }
      if (!before.equals(browser.script(STATE))) {
        wrong.add("the page is changed by " + file.getFileName());
      }
    }
    assertEquals(List.of(), wrong);
  }

  @Test
  void aSoundFileGoesThroughTheFormAndAsksTheSameOfTheEngine() throws IOException {
    for (Path file : files("sound")) {
      String text = Files.readString(file);
      LoadResult<List<Planned>> read = read(text);
      assertEquals(List.of(), read.problems(), file.toString());
      assertEquals(true, browser.script(OPEN, text), () -> file + browser.text("#plan-tell"));
      assertEquals(
          read.value().orElseThrow().get(0).request(),
          PlanJson.parse((String) browser.script(REQUEST)),
          file.toString());
    }
  }

  @Test
  void aRefusalIsToldInWordsWithItsPlace() throws IOException {
    for (Map.Entry<String, List<String>> told :
        Map.of(
                "ignition-word",
                List.of("ignition, item 1", "pilot-lights", "Did you mean “pilot-light”?"),
                "key-in-a-part",
                List.of("parts, item 1", "“colour”", "thickness"),
                "name-nothing",
                List.of("parts, item 1, name", "nothing is written"))
            .entrySet()) {
      browser.script(OPEN, Files.readString(FILES.resolve("bad/" + told.getKey() + ".yaml")));
      String text = browser.text("#plan-tell");
      told.getValue().forEach(words -> assertTrue(text.contains(words), text));
    }
  }

  @Test
  void afterAFileThatFailedThePageGoesOnAsBefore() throws IOException {
    for (String bad : List.of("name-a-list", "air-changes-quoted", "mixing-factor-true")) {
      browser.script(OPEN, Files.readString(FILES.resolve("bad/" + bad + ".yaml")));
      String before = (String) browser.script(REQUEST);
      browser.script(
          """
          const fields = window.benchlore.project.fields;
          fields.set({ species: fields.values.species === 'white-ash' ? 'white-oak' : 'white-ash' });
          fields.answerNow()""");
      assertFalse(before.equals(browser.script(REQUEST)), bad);
    }
  }

  private static List<Path> files(String kind) throws IOException {
    try (Stream<Path> files = Files.list(FILES.resolve(kind))) {
      List<Path> sorted = files.sorted().toList();
      assertFalse(sorted.isEmpty());
      return sorted;
    }
  }

  private LoadResult<List<Planned>> read(String text) throws IOException {
    Path file = Files.writeString(folder.resolve("ash-tool-chest.yaml"), text);
    return Plans.of(LibraryLoader.open(CONTENT), List.of(file), content.library());
  }
}
