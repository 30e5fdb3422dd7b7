package benchlore.generator.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Nothing that no build wrote is ever deleted, and what a killed build left is put right. */
final class SiteSafetyTest {
  private static final String ID = "0123abcd-0123-4567-89ab-0123456789ab";

  @TempDir private Path temp;

  private Path out;
  private Path content;

  @BeforeEach
  void writeASite() throws IOException {
    out = temp.toRealPath().resolve("site");
    content = Files.createDirectory(temp.resolve("records"));
    SiteWriter.write(files("old"), out);
  }

  @ParameterizedTest
  @ValueSource(strings = {"a.txt", ".hidden", "tools/mine.html", "content/x.yaml", "empty/"})
  void aFileOfOnesOwnInASiteStopsTheBuildAndIsNamed(String own) throws IOException {
    Path mine = out.resolve(own);
    Files.createDirectories(own.endsWith("/") ? mine : mine.getParent());
    if (!own.endsWith("/")) {
      Files.writeString(mine, "mine");
    }

    IOException ready =
        assertThrows(FileAlreadyExistsException.class, () -> SiteWriter.ready(out, content));
    IOException written =
        assertThrows(FileAlreadyExistsException.class, () -> SiteWriter.write(files("new"), out));

    String named = own.startsWith("content") ? "content/" : own;
    assertEquals(
        out + " holds what no build wrote: " + named + "; move it elsewhere, then build again",
        ready.getMessage());
    assertEquals(ready.getMessage(), written.getMessage());
    assertTrue(Files.exists(mine));
    assertOld();
    assertEquals(List.of("records", "site"), names());
  }

  @Test
  void ofManyFilesOfOnesOwnAFewAreNamedAndTheRestCounted() throws IOException {
    for (int i = 0; i < 8; i++) {
      Files.writeString(out.resolve("own" + i), "mine");
    }

    IOException refused = assertThrows(IOException.class, () -> SiteWriter.ready(out, content));

    assertTrue(refused.getMessage().contains(": own0, own1, own2, own3, own4 and 3 more; "));
  }

  @Test
  void whatADesktopLeavesInAFolderStopsNoBuild() throws IOException {
    Files.writeString(out.resolve(".DS_Store"), "x");
    Files.writeString(out.resolve("tools/Thumbs.db"), "x");

    SiteWriter.ready(out, content);
    SiteWriter.write(files("new"), out);

    assertEquals("new", Files.readString(out.resolve("index.html")));
    assertEquals(List.of("records", "site"), names());
  }

  @Test
  void aSiteWithoutAListIsRefused() throws IOException {
    Files.writeString(out.resolve(Manifest.FILE), "This folder is written whole.\n");

    IOException refused = assertThrows(IOException.class, () -> SiteWriter.ready(out, content));

    assertTrue(refused.getMessage().endsWith("delete that folder or give another"));
    assertOld();
  }

  @Test
  void contentAndSiteMayNotLieInOneAnother() throws IOException {
    Path inside = Files.createDirectory(out.resolve("content"));
    Path below = content.resolve("deep/site");

    for (Path[] pair : new Path[][] {{out, inside}, {below, content}, {content, content}}) {
      IOException refused =
          assertThrows(IOException.class, () -> SiteWriter.ready(pair[0], pair[1]));
      assertTrue(refused.getMessage().contains("lie in one another"), refused.getMessage());
    }
    assertTrue(Files.isDirectory(inside));
    assertFalse(Files.exists(below));
    SiteWriter.ready(temp.resolve("records-site"), content);
  }

  @ParameterizedTest
  @ValueSource(strings = {".site-old", ".site-new", ".site-old-" + ID, ".site-new-" + ID})
  void aHiddenFolderOfOnesOwnBesideTheSiteStays(String name) throws IOException {
    Path mine = Files.createDirectory(temp.resolve(name));
    Files.writeString(mine.resolve("precious.txt"), "mine");

    SiteWriter.ready(out, content);
    SiteWriter.write(files("new"), out);

    assertEquals("mine", Files.readString(mine.resolve("precious.txt")));
    assertEquals("new", Files.readString(out.resolve("index.html")));
  }

  @Test
  void anOldSiteIsPutBackWhereABuildDiedBetweenItsMoves() throws IOException {
    Files.move(out, temp.resolve(".site-old-" + ID));

    SiteWriter.ready(out, content);

    assertOld();
    assertEquals(List.of("records", "site"), names());
  }

  @ParameterizedTest
  @ValueSource(strings = {"-old-", "-new-"})
  void whatAKilledBuildLeftIsSwept(String kind) throws IOException {
    SiteWriter.write(files("left"), temp.resolve("left"));
    Path left = Files.move(temp.resolve("left"), temp.resolve(".site" + kind + ID));

    SiteWriter.ready(out, content);

    assertFalse(Files.exists(left));
    assertOld();
  }

  @Test
  void aFileOfOnesOwnInWhatAKilledBuildLeftStays() throws IOException {
    SiteWriter.write(files("left"), temp.resolve("left"));
    Path left = Files.move(temp.resolve("left"), temp.resolve(".site-new-" + ID));
    Files.writeString(left.resolve("tools/precious.txt"), "mine");

    SiteWriter.ready(out, content);

    assertEquals("mine", Files.readString(left.resolve("tools/precious.txt")));
    assertFalse(Files.exists(left.resolve("index.html")));
  }

  @Test
  void whatAnotherBuildIsStillWritingStays() throws IOException {
    SiteWriter.write(files("other"), temp.resolve("other"));
    Path other = Files.move(temp.resolve("other"), temp.resolve(".site-new-" + ID));
    try (FileChannel list =
        FileChannel.open(other.resolve(Manifest.FILE), StandardOpenOption.WRITE)) {
      list.lock();

      SiteWriter.ready(out, content);

      assertEquals("other", Files.readString(other.resolve("index.html")));
    }
  }

  @Test
  void aLinkToASiteStaysALink() throws IOException {
    Path link = Files.createSymbolicLink(temp.resolve("link"), out);

    SiteWriter.ready(link, content);
    SiteWriter.write(files("new"), link);

    assertTrue(Files.isSymbolicLink(link));
    assertEquals("new", Files.readString(out.resolve("index.html")));
  }

  private void assertOld() throws IOException {
    assertEquals("old", Files.readString(out.resolve("index.html")));
    assertEquals("old", Files.readString(out.resolve("tools/saw.html")));
  }

  private List<String> names() throws IOException {
    try (Stream<Path> paths = Files.list(temp)) {
      return paths.map(path -> path.getFileName().toString()).sorted().toList();
    }
  }

  private static SortedMap<String, byte[]> files(String text) {
    SortedMap<String, byte[]> files = new TreeMap<>();
    files.put("index.html", text.getBytes(StandardCharsets.UTF_8));
    files.put("tools/saw.html", text.getBytes(StandardCharsets.UTF_8));
    return files;
  }
}
