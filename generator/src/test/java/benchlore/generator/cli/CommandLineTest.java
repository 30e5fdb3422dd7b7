package benchlore.generator.cli;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.schedules.time.Moment;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a maker or a script sees of the commands, run on a small content folder. */
final class CommandLineTest {
  @TempDir private Path temp;

  private Path content;

  @BeforeEach
  void copyTheSmallContent() throws IOException {
    content = temp.resolve("content");
    Folders.copy(Folders.CONTENT.resolve("schema"), content.resolve("schema"));
    Folders.copy(Folders.RESOURCES.resolve("small-site").resolve("content"), content);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "build", "check", "plan", "reckon"})
  void helpReadsAsExpected(String command) throws IOException {
    Run help = command.isEmpty() ? Run.of("--help") : Run.of(command, "--help");

    Path expected =
        Folders.RESOURCES.resolve("help").resolve((command.isEmpty() ? "all" : command) + ".txt");
    if (Folders.UPDATE) {
      Folders.write(expected, help.out());
    }
    assertAll(
        () -> assertEquals(Folders.text(expected), help.out()),
        () -> assertEquals("", help.err()),
        () -> assertEquals(0, help.code()));
  }

  @Test
  void withoutACommandItHelps() {
    Run run = Run.of();

    assertEquals(0, run.code());
    assertEquals(Run.of("--help").out(), run.out());
  }

  @Test
  void checkCountsTheRecordsAndSaysNothingElse() {
    Run check = Run.of("check", "--content", content);

    assertEquals("", check.err());
    assertEquals(0, check.code());
    assertTrue(check.out().contains("    1 species\n"), check.out());
    assertTrue(check.out().endsWith("    1 plans\nNo problems.\n"), check.out());
  }

  @Test
  void buildSaysOneLine() {
    Path out = temp.resolve("site");

    Run build = Run.of("build", "--content", content, "--out", out);

    assertEquals("", build.err(), "quiet in a pipe");
    assertEquals(0, build.code());
    assertTrue(build.out().matches("Wrote \\d+ files\\. Open .*index\\.html\\n"), build.out());
    assertTrue(Files.exists(out.resolve("index.html")));
  }

  @Test
  void planPrintsDatedStepsWithCautions() {
    Run plan = Run.of("plan", "--content", content, content.resolve("plans/box.yaml"));

    assertEquals("", plan.err());
    assertEquals(0, plan.code());
    assertTrue(plan.out().startsWith("A box\n=====\nFrom Sat 3 Apr"), plan.out());
    assertTrue(plan.out().contains("[ ] "), plan.out());
    assertTrue(plan.out().contains("    ! "), plan.out());
    assertFalse(plan.out().contains("\u001b"), "no escape codes in a pipe");
    assertTrue(plan.out().lines().allMatch(line -> line.length() <= 100), plan.out());
  }

  @Test
  void planPrintsJson() throws IOException {
    Run plan =
        Run.of("plan", "--format=json", "--content", content, content.resolve("plans/box.yaml"));

    assertEquals("", plan.err());
    assertEquals(0, plan.code());
    JsonNode steps = new ObjectMapper().readTree(plan.out()).at("/value/steps");
    assertTrue(steps.size() > 3, plan.out());
    for (JsonNode step : steps) {
      assertTrue(step.path("id").isTextual(), step.toString());
      assertTrue(step.path("title").isTextual(), step.toString());
      for (JsonNode slot : step.path("slots")) {
        Moment start = Moment.parse(slot.path("start").asText());
        assertTrue(start.isBefore(Moment.parse(slot.path("end").asText())));
      }
      for (JsonNode caution : step.path("cautions")) {
        assertFalse(caution.at("/measure/pattern").asText().isEmpty(), caution.toString());
      }
    }
  }

  @Test
  void aRequestPrintedAndReadBackGivesTheSamePlan() throws IOException {
    Path file = content.resolve("plans/box.yaml");
    Run request = Run.of("plan", "--format=request", "--content", content, file);
    Path asked = Files.writeString(temp.resolve("box.json"), request.out());

    assertEquals(0, request.code());
    for (String format : List.of("json", "request")) {
      Run direct = Run.of("plan", "--format", format, "--content", content, file);
      Run read = Run.of("plan", "--format", format, "--request", asked);
      assertEquals("", read.err());
      assertEquals(0, read.code());
      assertEquals(direct.out(), read.out());
    }
    assertTrue(Run.of("plan", "--request", asked).out().startsWith("box\n===\nFrom Sat 3 Apr"));
    assertTrue(
        Run.of("plan", "--request", asked, "--format=ics").out().startsWith("BEGIN:VCALENDAR"));
  }

  @Test
  void aBrokenRequestIsToldInOneLineAndCodeOne() throws IOException {
    Path file = content.resolve("plans/box.yaml");
    String sound = Run.of("plan", "--format=request", "--content", content, file).out();
    assertBroken("no JSON at line 1, column 3: ", "{ x");
    assertBroken("request must be an object", "[1]");
    assertBroken("request must be an object", "");
    assertBroken("no JSON at line 1, column 4: ", "{} {}");
    assertBroken("request.materials must be an object", sound.replace("materials", "material"));
    assertBroken(
        "request.parts[0].count must be a whole number",
        sound.replaceFirst("\"count\" : \\d+", "\"count\" : 1.5"));
    assertBroken(
        "request.settled must be true or false",
        sound.replaceFirst("\"settled\" : \\w+", "\"settled\" : 1"));
    assertBroken(
        "request.start must be a moment such as 2027-01-12T18:30",
        sound.replaceFirst("\"start\" : \"[^\"]*\"", "\"start\" : \"tomorrow\""));
  }

  private void assertBroken(String message, String request) throws IOException {
    Path file = Files.writeString(temp.resolve("broken.json"), request);
    Run run = Run.of("plan", "--request", file);
    assertEquals("", run.out());
    assertTrue(run.err().startsWith(file + ": " + message), run.err());
    assertEquals(2, run.err().lines().count(), run.err());
    assertEquals(1, run.code());
  }

  @Test
  void aRefusedPlanGivesItsReasonsAndCodeOne() throws IOException {
    Path file = content.resolve("plans/box.yaml");
    Files.writeString(file, Files.readString(file).replace("moisture: 10 %", "moisture: 60 %"));

    Run text = Run.of("plan", "--content", content, file);
    Run json = Run.of("plan", "--format=json", "--content", content, file);

    assertEquals(1, text.code());
    assertTrue(text.out().contains("moisture"), text.out());
    assertEquals(1, json.code());
    JsonNode reasons = new ObjectMapper().readTree(json.out()).path("reasons");
    assertTrue(reasons.size() > 0, json.out());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "plann",
        "plan",
        "--nope",
        "build --content",
        "plan a.yaml --format=xml",
        "plan a.yaml --request=b.json",
        "check x"
      })
  void aWrongCommandLineIsCodeTwo(String line) {
    Run run = Run.of((Object[]) line.split(" "));

    assertEquals(2, run.code());
    assertEquals("", run.out());
    assertFalse(run.err().isBlank());
    assertFalse(run.err().contains("Exception"), run.err());
  }

  @Test
  void aFileThatCannotBeReadIsCodeThreeAndNamed() {
    Path missing = temp.resolve("missing.yaml");

    assertAll(
        () -> assertFiles("no such file: " + missing, "plan", "--content", content, missing),
        () -> assertFiles(temp + " is a folder; give a plan file", "plan", temp),
        () -> assertFiles(temp + " is a folder; give a request", "plan", "--request", temp),
        () -> assertFiles("no such file: " + missing, "plan", "--request", missing),
        () -> assertFiles(missing + " is no folder", "check", "--content", missing),
        () -> assertFiles("no such file: " + temp.resolve("schema"), "check", "--content", temp));
  }

  @Test
  void aForeignOutFolderIsCodeThree() throws IOException {
    Path mine = Files.createDirectory(temp.resolve("mine"));
    Files.writeString(mine.resolve("notes.txt"), "mine");

    assertFiles(
        mine + " holds files that are no site of ours; give an empty or new folder",
        "build",
        "--content",
        content,
        "--out",
        mine);
    assertEquals("mine", Files.readString(mine.resolve("notes.txt")));
  }

  private static void assertFiles(String message, Object... args) {
    Run run = Run.of(args);
    assertEquals("benchlore: " + message + System.lineSeparator(), run.err());
    assertEquals("", run.out());
    assertEquals(3, run.code());
  }
}
