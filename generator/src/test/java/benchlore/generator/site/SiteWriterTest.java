package benchlore.generator.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class SiteWriterTest {
  @TempDir private Path temp;

  @Test
  void aNewSiteIsWrittenWhole() throws IOException {
    Path out = temp.resolve("new").resolve("site");

    SiteWriter.write(files("index.html", "a", "tools/saw.html", "b"), out);

    assertEquals(List.of("benchlore-site.txt", "index.html", "tools", "tools/saw.html"), tree(out));
    assertEquals("b", Files.readString(out.resolve("tools/saw.html")));
    assertEquals(List.of("site"), names(out.getParent()));
  }

  @Test
  void anOlderSiteIsReplacedAndNothingOfItStays() throws IOException {
    Path out = temp.resolve("site");
    SiteWriter.write(files("index.html", "old", "gone/page.html", "old"), out);

    SiteWriter.write(files("index.html", "new"), out);

    assertEquals(List.of("benchlore-site.txt", "index.html"), tree(out));
    assertEquals("new", Files.readString(out.resolve("index.html")));
    assertEquals(List.of("site"), names(temp));
  }

  @Test
  void anEmptyFolderIsTaken() throws IOException {
    Path out = Files.createDirectory(temp.resolve("site"));

    SiteWriter.write(files("index.html", "a"), out);

    assertEquals("a", Files.readString(out.resolve("index.html")));
  }

  @Test
  void aFolderOfSomeoneElseIsRefused() throws IOException {
    Path out = Files.createDirectory(temp.resolve("photos"));
    Files.writeString(out.resolve("boat.txt"), "mine");

    IOException refused =
        assertThrows(
            FileAlreadyExistsException.class,
            () -> SiteWriter.write(files("index.html", "a"), out));

    assertTrue(refused.getMessage().endsWith("give an empty or new folder"), refused.getMessage());
    assertEquals(List.of("boat.txt"), tree(out));
    assertEquals(List.of("photos"), names(temp));
  }

  @Test
  void aFileIsRefused() throws IOException {
    Path out = Files.writeString(temp.resolve("list.txt"), "mine");

    assertThrows(
        FileAlreadyExistsException.class, () -> SiteWriter.write(files("index.html", "a"), out));

    assertEquals("mine", Files.readString(out));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"../stolen.html", "a/../../stolen.html", "a/../../site-new/../stolen.html"})
  void aPageCannotLeaveTheSite(String path) throws IOException {
    Path out = temp.resolve("site");
    SiteWriter.write(files("index.html", "old"), out);

    assertThrows(IOException.class, () -> SiteWriter.write(files(path, "x"), out));

    assertEquals("old", Files.readString(out.resolve("index.html")));
    assertEquals(List.of("site"), names(temp));
  }

  @Test
  void theOldSiteSurvivesAWriteThatFails() throws IOException {
    Path out = temp.resolve("site");
    SiteWriter.write(files("index.html", "old"), out);

    // A page can't be a folder and a file at once, so the second one fails.
    assertThrows(
        IOException.class,
        () -> SiteWriter.write(files("index.html", "new", "page", "x", "page/more", "y"), out));

    assertEquals(List.of("benchlore-site.txt", "index.html"), tree(out));
    assertEquals("old", Files.readString(out.resolve("index.html")));
    assertEquals(List.of("site"), names(temp));
  }

  private static SortedMap<String, byte[]> files(String... pathsAndTexts) {
    SortedMap<String, byte[]> files = new TreeMap<>();
    for (int i = 0; i < pathsAndTexts.length; i += 2) {
      files.put(pathsAndTexts[i], pathsAndTexts[i + 1].getBytes(StandardCharsets.UTF_8));
    }
    return files;
  }

  private static List<String> tree(Path folder) throws IOException {
    try (Stream<Path> paths = Files.walk(folder)) {
      return paths
          .filter(path -> !path.equals(folder))
          .map(path -> folder.relativize(path).toString().replace('\\', '/'))
          .sorted()
          .toList();
    }
  }

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> paths = Files.list(folder)) {
      return paths.map(path -> path.getFileName().toString()).sorted().toList();
    }
  }
}
