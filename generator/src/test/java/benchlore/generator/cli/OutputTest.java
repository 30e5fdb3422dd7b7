package benchlore.generator.cli;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is printed arrives whole and in UTF-8, or the exit code says that it did not. */
final class OutputTest {
  @TempDir private Path temp;

  private Path content;
  private Path plan;

  @BeforeEach
  void copyTheSmallContent() throws IOException {
    content = temp.resolve("content");
    Folders.copy(Folders.CONTENT.resolve("schema"), content.resolve("schema"));
    Folders.copy(Folders.RESOURCES.resolve("small-site").resolve("content"), content);
    plan = content.resolve("plans/box.yaml");
  }

  @Test
  @EnabledOnOs(OS.LINUX)
  void aPlanComesThroughAPipe() throws Exception {
    Program.Done piped =
        Program.started("plan", "--content", content, "/dev/stdin").given(Files.readAllBytes(plan));

    assertEquals("", piped.err());
    assertEquals(0, piped.code());
    assertEquals(Run.of("plan", "--content", content, plan).out(), piped.out());
  }

  @ParameterizedTest
  @EnabledOnOs(OS.LINUX)
  @ValueSource(strings = {"text", "ics", "json", "request"})
  void withoutALanguageInTheEnvironmentNoSignIsLost(String format) throws Exception {
    Program.Done bare =
        Program.started("plan", "--format", format, "--content", content, plan).given();

    assertEquals(0, bare.code());
    assertEquals(Run.of("plan", "--format", format, "--content", content, plan).out(), bare.out());
  }

  @ParameterizedTest
  @EnabledOnOs(OS.LINUX)
  @ValueSource(strings = {"> /dev/full", ">&-"})
  void standardOutputThatCannotBeWrittenIsCodeThree(String redirection) throws Exception {
    Program.Done done =
        Program.started("plan", "--format=json", "--content", content, plan)
            .redirected(redirection)
            .given();

    assertTrue(done.err().startsWith("benchlore: standard output can't be written: "), done.err());
    assertEquals(1, done.err().lines().count(), done.err());
    assertEquals("", done.out());
    assertEquals(3, done.code());
  }

  @Test
  void everyCommandTellsThatItsOutputFailed() {
    assertAll(
        () -> assertFull("plan", "--content", content, plan),
        () -> assertFull("plan", "--format=json", "--content", content, plan),
        () -> assertFull("plan", "--format=ics", "--content", content, plan),
        () -> assertFull("plan", "--format=request", "--content", content, plan),
        () -> assertFull("check", "--content", content),
        () -> assertFull("build", "--content", content, "--out", temp.resolve("site")),
        () -> assertFull("--help"),
        () -> assertFull("plan", "--help"),
        () -> assertFull());
  }

  @ParameterizedTest
  @ValueSource(strings = {"text", "ics", "json", "request"})
  void aPlanIsWrittenToAFileAsItWouldBePrinted(String format) throws IOException {
    Path out = Files.writeString(temp.resolve("plan.out"), "an older one, longer than nothing");

    Run run = Run.of("plan", "--format", format, "--content", content, plan, "--out", out);

    assertEquals(new Run(0, "", ""), run);
    assertEquals(
        Run.of("plan", "--format", format, "--content", content, plan).out(),
        Files.readString(out, StandardCharsets.UTF_8));
    assertEquals(List.of("content", "plan.out"), names());
  }

  @Test
  void aRefusedPlanLeavesTheFileAsItWas() throws IOException {
    Files.writeString(plan, Files.readString(plan).replace("moisture: 10 %", "moisture: 60 %"));
    Path out = Files.writeString(temp.resolve("plan.ics"), "older");

    Run run = Run.of("plan", "--format=ics", "--content", content, plan, "--out", out);

    assertEquals(1, run.code());
    assertTrue(run.out().contains("moisture"), run.out());
    assertEquals("older", Files.readString(out));
  }

  @Test
  void aPlaceThatCannotTakeAWholeFileIsRefused() throws IOException {
    String sound = Files.readString(plan);

    assertAll(
        () -> assertRefused(temp, temp + " is a folder; give a file"),
        () ->
            assertRefused(
                temp.resolve("no/x"), temp.resolve("no") + " is no folder; make it first"),
        () -> assertRefused(plan, plan + " is what is read; give another file to write"));
    assertEquals(sound, Files.readString(plan));
    assertEquals(List.of("content"), names());
  }

  @Test
  @EnabledOnOs(OS.LINUX)
  void aDeviceIsNotReplacedByAFile() {
    assertRefused(
        Path.of("/dev/full"), "/dev/full is no ordinary file; print to it with > instead");
    assertFalse(Files.isRegularFile(Path.of("/dev/full")));
  }

  private void assertRefused(Path out, String message) {
    Run run = Run.of("plan", "--content", content, plan, "--out", out);
    assertEquals(new Run(3, "", "benchlore: " + message + System.lineSeparator()), run);
  }

  private static void assertFull(Object... args) {
    OutputStream full =
        new OutputStream() {
          @Override
          public void write(int b) throws IOException {
            throw new IOException("No space left on device");
          }
        };
    Run run = Run.to(full, args);
    assertTrue(run.err().startsWith("benchlore: standard output can't be written"), run.err());
    assertEquals(1, run.err().lines().count(), run.err());
    assertEquals(3, run.code());
  }

  private List<String> names() throws IOException {
    try (Stream<Path> paths = Files.list(temp)) {
      return paths.map(path -> path.getFileName().toString()).sorted().toList();
    }
  }
}
