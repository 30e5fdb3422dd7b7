package benchlore.generator.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** A plan file may be called anything; a failure of the program itself is told apart. */
final class PlanFileNamesTest {
  @TempDir private Path temp;

  private Path content;

  @BeforeEach
  void copyTheSmallContent() throws IOException {
    content = temp.resolve("content");
    Folders.copy(Folders.CONTENT.resolve("schema"), content.resolve("schema"));
    Folders.copy(Folders.RESOURCES.resolve("small-site").resolve("content"), content);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"my-plan.yaml", "box (1).yaml", "box", ".yaml", "box.YAML", "Kästchen.txt"})
  void aPlanFileIsPlannedWhateverItsName(String name) throws IOException {
    Path named = content.resolve("plans/box.yaml");
    Path copy = Files.copy(named, temp.resolve(name));

    for (String format : new String[] {"text", "json", "ics", "request"}) {
      Run renamed = Run.of("plan", "--format", format, "--content", content, copy);

      assertEquals("", renamed.err());
      assertEquals(0, renamed.code());
      assertEquals(Run.of("plan", "--format", format, "--content", content, named), renamed);
    }
  }

  @Test
  void aPlanFileWithAMistakeIsStillToldByItsOwnName() throws IOException {
    Path copy = temp.resolve("my-plan.yaml");
    String sound = Files.readString(content.resolve("plans/box.yaml"));
    Files.writeString(copy, sound.replaceFirst("title:", "titel:"));

    Run run = Run.of("plan", "--content", content, copy);

    assertEquals(1, run.code());
    assertEquals("", run.out());
    assertTrue(run.err().contains("/my-plan.yaml:"), run.err());
    assertTrue(run.err().endsWith("Nothing was planned.\n"), run.err());
  }

  @Test
  void aFailureOfTheProgramIsOneLineAndCodeFour() {
    Run run =
        Run.with(
            failing(
                () -> {
                  throw new IllegalStateException("no such wood\nmore");
                }),
            "fail");

    assertEquals(
        "benchlore: this program failed (IllegalStateException: no such wood)"
            + System.lineSeparator(),
        run.err());
    assertEquals("", run.out());
    assertEquals(4, run.code());
  }

  @Test
  void anErrorOfTheMachineIsOneLineAndCodeFour() {
    Run run =
        Run.with(
            failing(
                () -> {
                  throw new StackOverflowError();
                }),
            "fail");

    assertEquals(
        "benchlore: this program failed (StackOverflowError)" + System.lineSeparator(), run.err());
    assertEquals(4, run.code());
  }

  @Test
  void whereItFailedIsToldWhenAskedFor() {
    Run before =
        Run.with(
            failing(
                () -> {
                  throw new IllegalStateException("x");
                }),
            "--trace",
            "fail");
    Run after =
        Run.with(
            failing(
                () -> {
                  throw new StackOverflowError();
                }),
            "fail",
            "--trace");

    assertTrue(
        before.err().contains("\tat benchlore.generator.cli.PlanFileNamesTest"), before.err());
    assertTrue(after.err().contains("\tat benchlore.generator.cli.PlanFileNamesTest"), after.err());
    assertEquals(4, before.code());
    assertEquals(4, after.code());
    assertFalse(Run.of("--help", "--trace").err().contains("\tat "));
  }

  private static UnaryOperator<CommandLine> failing(Callable<Integer> body) {
    return line -> line.addSubcommand("fail", new Failing(body));
  }

  /** A command that fails as a mistake in the program would. */
  @Command
  private record Failing(Callable<Integer> body) implements Callable<Integer> {
    @Override
    public Integer call() throws Exception {
      return body.call();
    }
  }
}
