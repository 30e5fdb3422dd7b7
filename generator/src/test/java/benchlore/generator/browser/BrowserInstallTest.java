package benchlore.generator.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
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
  void thePathIsSearchedAfterTheUsualFolder() {
    assertEquals(
        List.of(Path.of("/usr/bin"), Path.of("/opt/a")),
        BrowserInstall.searchPath("/opt/a" + java.io.File.pathSeparator + "/usr/bin"));
  }

  private Path program(String name, String version) throws IOException {
    Path file = folder.resolve(name);
    Files.writeString(file, "#!/bin/sh\necho '" + version + "'\n");
    assertTrue(file.toFile().setExecutable(true));
    return file;
  }
}
