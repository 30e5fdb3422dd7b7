package benchlore.generator.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.generator.content.LibraryLoader;
import benchlore.generator.content.LoadResult;
import benchlore.generator.planning.Content;
import benchlore.generator.planning.Planned;
import benchlore.generator.planning.Plans;
import benchlore.schedules.exchange.EngineJson;
import benchlore.schedules.exchange.Node;
import benchlore.schedules.project.Moves;
import benchlore.schedules.project.ProjectRequest;
import benchlore.schedules.projectfile.FileProblem;
import benchlore.schedules.projectfile.PlanFileJson;
import benchlore.schedules.projectfile.ProjectFile;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The engine, as a page uses it, and the schemas accept the same plan files and refuse the same.
 */
final class PlanFileFormsTest {
  private static final Path CONTENT = Path.of("../content");
  private static final Path FILES = Path.of("src/test/resources/plan-files");
  private static final ObjectMapper JSON = new ObjectMapper();
  private static Content content;
  @TempDir Path folder;

  @BeforeAll
  static void loadContent() throws IOException {
    content = Content.load(CONTENT).value().orElseThrow();
  }

  @Test
  void aBadFileIsRefusedByBoth() throws IOException {
    List<String> wrong = new ArrayList<>();
    for (Path file : files("bad")) {
      if (read(Files.readString(file)).problems().isEmpty()) {
        wrong.add("the command line accepts " + file.getFileName());
      }
      if (isSound(file)) {
        wrong.add("the page accepts " + file.getFileName());
      }
    }
    assertEquals(List.of(), wrong);
  }

  /** In form, and then in what it means; a record that is not there the page itself can't find. */
  private boolean isSound(Path file) throws IOException {
    if (!ProjectFile.forms(node(file)).isEmpty()) {
      return false;
    }
    String species = yaml(file).path("species").asText();
    if (!content.library().entries().containsKey(species)) {
      return false;
    }
    String answer = JsonText.answer(PlanFileJson::read, asked(file).toString());
    return JSON.readTree(answer).path("problems").isEmpty();
  }

  @Test
  void aSoundFileIsAcceptedByBothAndAsksTheSameOfTheEngine() throws IOException {
    for (Path file : files("sound")) {
      LoadResult<List<Planned>> read = read(Files.readString(file));
      assertEquals(List.of(), read.problems(), file.toString());
      assertEquals(List.of(), ProjectFile.forms(node(file)), file.toString());
      assertEquals(read.value().orElseThrow().get(0).request(), asPage(file), file.toString());
    }
  }

  /** What a file said before it had words for it still means the same. */
  @Test
  void trueInAnOlderFileIsHingedAndFalseFixed() throws IOException {
    assertEquals(Moves.HINGED, moves("plain"));
    assertEquals(Moves.FIXED, moves("no-clamps"));
    assertEquals(Moves.SLIDING, moves("moves-in-words"));
  }

  private Moves moves(String file) throws IOException {
    return asPage(FILES.resolve("sound/" + file + ".yaml")).parts().get(0).moves();
  }

  @Test
  void theDemoPlansAskTheSameOfTheEngineInThePage() throws IOException {
    for (Planned planned : content.plans()) {
      Path file = CONTENT.resolve("plans/" + planned.id() + ".yaml");
      assertEquals(List.of(), ProjectFile.forms(node(file)));
      assertEquals(planned.request(), asPage(file), planned.id());
    }
  }

  /** The request a page gets: what the engine reads, with the materials the page has. */
  private ProjectRequest asPage(Path file) throws IOException {
    JsonNode asked = asked(file);
    JsonNode answer = JSON.readTree(JsonText.answer(PlanFileJson::read, asked.toString()));
    assertEquals("[]", answer.path("problems").toString());
    ObjectNode request = (ObjectNode) answer.path("request");
    ObjectNode materials = asked.path("materials").deepCopy();
    for (int i = 0; i < materials.path("layers").size(); i++) {
      ObjectNode layer = (ObjectNode) materials.path("layers").get(i);
      layer.set("coats", request.path("coats").get(i));
    }
    request.set("materials", materials);
    return EngineJson.planRequest(JsonTree.read(request.toString()));
  }

  /** What a page hands over; the records are those of the plan, or of a demo where it has none. */
  private ObjectNode asked(Path file) throws IOException {
    ObjectNode asked = JSON.createObjectNode();
    JsonNode plan = yaml(file);
    asked.set("plan", plan);
    asked.set("shop", yaml(CONTENT.resolve("shop.yaml")));
    Planned like =
        read(Files.readString(file))
            .value()
            .map(read -> read.get(0))
            .orElse(content.plans().get(0));
    ObjectNode materials =
        (ObjectNode) JSON.readTree(PlanJson.render(like.request())).path("materials");
    // How they go on stands in the file alone.
    materials.path("layers").forEach(layer -> ((ObjectNode) layer).remove("coats"));
    asked.set("materials", materials);
    if (plan.has("adhesive-minimum")) {
      label((ObjectNode) asked.at("/materials/adhesive/minimum-temperature"), plan);
    }
    return asked;
  }

  /** What the page's label.js makes of the adhesive. */
  private static void label(ObjectNode minimum, JsonNode plan) {
    double celsius = Double.parseDouble(plan.path("adhesive-minimum").asText().split(" ", -1)[0]);
    minimum.put("low", celsius).put("high", celsius);
    minimum.putObject("from").put("kind", "INPUT").put("title", "").put("where", "");
  }

  @Test
  void theLabelOfTheAdhesiveDecidesOverItsRecord() throws IOException {
    Path file = FILES.resolve("sound/label-of-the-adhesive.yaml");
    ProjectRequest labelled = read(Files.readString(file)).value().orElseThrow().get(0).request();
    ProjectRequest usual =
        read(Files.readString(FILES.resolve("sound/grain-and-wet-film.yaml")))
            .value()
            .orElseThrow()
            .get(0)
            .request();
    assertEquals(13, labelled.materials().adhesive().air().minimumTemperature().high());
    assertEquals(10, usual.materials().adhesive().air().minimumTemperature().high());
  }

  @Test
  void aRefusalNamesThePathTheWordAndWhatIsAccepted() throws IOException {
    for (Map.Entry<String, List<String>> told :
        Map.of(
                "ignition-word",
                    List.of("ignition.0", "pilot-lights", "Did you mean `pilot-light`?"),
                "sander-word", List.of("sanders", "belt-sander", "Accepted: ", "hand-profile"),
                "hours-day", List.of("hours", "`mon`", "Accepted: monday, tuesday"),
                "key-of-the-file", List.of("`ignitions`", "Did you mean `ignition`?"),
                "key-in-climate", List.of("climate", "`wind`", "low, high, humidity"),
                "key-in-a-part", List.of("parts.0", "`colour`", "thickness"),
                "air-changes-quoted", List.of("air-changes", "12", "without quotes"),
                "name-a-list", List.of("parts.0.name", "door"),
                "name-nothing", List.of("parts.0.name", "nothing is written"))
            .entrySet()) {
      StringBuilder text = new StringBuilder();
      for (FileProblem problem :
          ProjectFile.forms(node(FILES.resolve("bad/" + told.getKey() + ".yaml")))) {
        text.append(String.join(".", problem.path())).append(' ').append(problem.what());
        text.append(". ").append(problem.todo()).append('\n');
      }
      told.getValue()
          .forEach(words -> assertTrue(text.toString().contains(words), text.toString()));
    }
  }

  @Test
  void everythingWrongIsToldAtOnce() throws IOException {
    String bad =
        Files.readString(files("sound").get(0))
            .replaceFirst("(?m)^title:.*$", "title: 7\ncolour: red")
            .replaceFirst("(?m)^place:.*$", "place: attic");
    Path file = Files.writeString(folder.resolve("bad.yaml"), bad);
    assertEquals(3, ProjectFile.forms(node(file)).size());
  }

  private static List<Path> files(String kind) throws IOException {
    try (Stream<Path> files = Files.list(FILES.resolve(kind))) {
      List<Path> sorted = files.sorted().toList();
      assertFalse(sorted.isEmpty());
      return sorted;
    }
  }

  private static JsonNode yaml(Path file) throws IOException {
    return new YAMLMapper().readTree(Files.readString(file));
  }

  private static Node node(Path file) throws IOException {
    return JsonTree.read(yaml(file).toString());
  }

  private LoadResult<List<Planned>> read(String text) throws IOException {
    Path file = Files.writeString(folder.resolve("ash-tool-chest.yaml"), text);
    return Plans.of(LibraryLoader.open(CONTENT), List.of(file), content.library());
  }
}
