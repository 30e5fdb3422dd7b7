package benchlore.generator.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How a browser is looked for; the programs are small scripts that only tell a version. */
class BrowserInstallTest {
  @TempDir Path folder;

  @Test
  void anEmptyFolderGivesNothingAndTheAdviceNamesThePackages() {
    assertEquals(Optional.empty(), BrowserInstall.lookIn(List.of(folder)));
    String advice = BrowserInstall.advice(List.of(folder));
    assertTrue(advice.contains("apt-get install chromium chromium-driver"), advice);
    assertTrue(advice.contains("Found browsers: none; drivers: none."), advice);
  }

  @Test
  void theBrowserOfTheDriversOwnVersionIsTaken() throws IOException {
    program("chromium", "Chromium 150.0.1.2");
    Path chrome = program("google-chrome", "Chrome 151.0.7.1");
    Path driver = program("chromedriver", "ChromeDriver 151.0.9.9 (abc)");
    assertEquals(
        Optional.of(new BrowserInstall(chrome, driver)), BrowserInstall.lookIn(List.of(folder)));
  }

  @Test
  void aPairThatDoesNotMatchIsNoPairAndTheAdviceShowsBothVersions() throws IOException {
    program("chromium", "Chromium 150.0.1.2");
    program("chromedriver", "ChromeDriver 151.0.9.9");
    assertEquals(Optional.empty(), BrowserInstall.lookIn(List.of(folder)));
    String advice = BrowserInstall.advice(List.of(folder));
    assertTrue(advice.contains("chromium (150)") && advice.contains("chromedriver (151)"), advice);
  }

  @Test
  void rootGetsThePackagesInstalledAfterTheListsAreFetched() throws IOException {
    packageTool();
    BrowserInstall found = BrowserInstall.requireIn(List.of(folder), true);
    assertEquals(folder.resolve("chromium"), found.browser());
    List<String> calls = Files.readAllLines(folder.resolve("calls"));
    assertEquals(2, calls.size());
    assertTrue(calls.get(0).endsWith(" update"), calls.get(0));
    assertTrue(calls.get(1).endsWith(" chromium chromium-driver"), calls.get(1));
  }

  @Test
  void anyoneElseIsToldWhatToInstallAndNothingIsTouched() throws IOException {
    packageTool();
    AssertionError told =
        assertThrows(AssertionError.class, () -> BrowserInstall.requireIn(List.of(folder), false));
    assertTrue(told.getMessage().contains("On Debian: apt-get install"), told.getMessage());
    assertFalse(Files.exists(folder.resolve("calls")));
  }

  @Test
  void aCommandThatHangsIsStopped() {
    Command.Outcome outcome =
        new Command(List.of("sleep", "600"), Duration.ofMillis(100)).run(line -> {});
    assertEquals(Command.Outcome.OUT_OF_TIME, outcome);
  }

  @Test
  void aCommandThatIsNotThereSaysSo() {
    List<String> lines = new ArrayList<>();
    Command.Outcome outcome =
        new Command(List.of(folder.resolve("none").toString()), Duration.ofSeconds(5))
            .run(lines::add);
    assertEquals(Command.Outcome.NOT_STARTED, outcome);
    assertTrue(lines.get(0).contains("none"), lines.toString());
  }

  @Test
  void thePathIsSearchedAfterTheUsualFolder() {
    assertEquals(
        List.of(Path.of("/usr/bin"), Path.of("/opt/a")),
        BrowserInstall.searchPath("/opt/a" + File.pathSeparator + "/usr/bin"));
  }

  private Path program(String name, String version) throws IOException {
    Path file = folder.resolve(name);
    Files.writeString(file, "#!/bin/sh\necho '" + version + "'\n");
    assertTrue(file.toFile().setExecutable(true));
    return file;
  }

  /** A stand-in for the package tool: notes each call, and installs two programs when asked. */
  private void packageTool() throws IOException {
    Path tool = program("apt-get", "");
    Files.writeString(
        tool,
        """
        #!/bin/sh
        cd "$(dirname "$0")" && echo "$@" >> calls
        case "$*" in *" install "*)
          for name in chromium chromedriver; do
            printf '#!/bin/sh\\necho Version 150.0.1.2\\n' > $name && chmod +x $name
          done;;
        esac
        """);
  }
}
