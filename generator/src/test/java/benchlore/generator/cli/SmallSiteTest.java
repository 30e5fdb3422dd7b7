package benchlore.generator.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** A small content folder and the pages it becomes, kept beside it. */
final class SmallSiteTest {
  private static final Path SMALL = Folders.RESOURCES.resolve("small-site");

  @TempDir private Path temp;

  @Test
  void thePagesAreAsKept() throws IOException {
    SortedMap<String, byte[]> pages = pages(build("site"));
    Path expected = SMALL.resolve("expected");
    if (Folders.UPDATE) {
      Folders.delete(expected);
      for (var page : pages.entrySet()) {
        Folders.write(
            expected.resolve(page.getKey()), new String(page.getValue(), StandardCharsets.UTF_8));
      }
    }

    SortedMap<String, byte[]> kept = Folders.read(expected);
    assertEquals(kept.keySet(), pages.keySet());
    for (var page : kept.entrySet()) {
      assertEquals(
          new String(page.getValue(), StandardCharsets.UTF_8),
          new String(pages.get(page.getKey()), StandardCharsets.UTF_8),
          page.getKey());
    }
  }

  @Test
  void twoBuildsAreTheSameBytes() throws IOException {
    SortedMap<String, byte[]> first = Folders.read(build("one"));
    SortedMap<String, byte[]> second = Folders.read(build("two"));

    assertFalse(first.isEmpty());
    assertEquals(first.keySet(), second.keySet());
    first.forEach((path, bytes) -> assertArrayEquals(bytes, second.get(path), path));
  }

  @Test
  @EnabledOnOs(OS.LINUX)
  void buildsInProcessesOfTheirOwnAreTheSameBytes() throws Exception {
    SortedMap<String, byte[]> here = Folders.read(build("here"));
    // A process has one salt for the order of its unordered maps; three leave little to luck.
    for (int run = 0; run < 3; run++) {
      Path out = temp.resolve("run" + run);
      Program.Done done =
          Program.started("build", "--content", temp.resolve("here-content"), "--out", out).given();
      assertEquals("", done.err());
      SortedMap<String, byte[]> there = Folders.read(out);
      assertEquals(here.keySet(), there.keySet());
      here.forEach((path, bytes) -> assertArrayEquals(bytes, there.get(path), path));
    }
    String files = new String(here.get("js/plan-files.js"), StandardCharsets.UTF_8);
    assertTrue(
        files.matches("(?s).*\\{.{1,3}id\\W.*title\\W.*text\\W.*"),
        "id, title, text in this order");
  }

  private Path build(String name) throws IOException {
    Path content = temp.resolve(name + "-content");
    Folders.copy(Folders.CONTENT.resolve("schema"), content.resolve("schema"));
    Folders.copy(SMALL.resolve("content"), content);
    Path out = temp.resolve(name);
    Run build = Run.of("build", "--content", content, "--out", out);
    assertEquals("", build.err());
    assertEquals(0, build.code());
    return out;
  }

  /** The pages, pictures and the finder's data; the template's own files are not output. */
  private static SortedMap<String, byte[]> pages(Path site) throws IOException {
    SortedMap<String, byte[]> pages = new TreeMap<>(Folders.read(site));
    pages
        .keySet()
        .removeIf(
            path ->
                !path.endsWith(".html")
                    && !path.startsWith("drawings/")
                    && !path.equals("js/finder-data.js"));
    return pages;
  }
}
