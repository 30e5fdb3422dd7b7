package benchlore.generator.cli;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * One tiny content folder for each kind of mistake, with the exact report beside it in {@code
 * expected.txt}. The schemas are the real ones.
 */
final class BadContentTest {
  private static final Path BAD = Folders.RESOURCES.resolve("bad");
  private static final String EXPECTED = "expected.txt";

  @TempDir private Path temp;
  @TempDir private Path sources;

  static List<String> mistakes() throws IOException {
    try (Stream<Path> folders = Files.list(BAD)) {
      return folders.map(folder -> folder.getFileName().toString()).sorted().toList();
    }
  }

  @ParameterizedTest
  @MethodSource("mistakes")
  void aMistakeIsReportedWordForWord(String mistake) throws IOException {
    Run check = Run.of("check", "--content", content(mistake));

    Path expected = BAD.resolve(mistake).resolve(EXPECTED);
    if (Folders.UPDATE) {
      Folders.write(expected, check.err());
    }
    assertAll(
        () -> assertEquals(Folders.text(expected), check.err()),
        () -> assertForm(check.err().lines().toList()),
        () -> assertEquals("", check.out()),
        () -> assertEquals(1, check.code()));
  }

  /** Whatever the mistake: numbered, a place, what to do, and how many there are. */
  private static void assertForm(List<String> lines) {
    int problems = (lines.size() - 1) / 2;
    assertTrue(problems > 0, "no problem");
    for (int i = 0; i < problems; i++) {
      String what = lines.get(2 * i);
      assertTrue(what.matches((i + 1) + "\\. content/\\S+:\\d+:\\d+: .+"), what);
      assertTrue(lines.get(2 * i + 1).matches(" {3}\\S.*[.?]"), lines.get(2 * i + 1));
    }
    String count = problems == 1 ? "1 problem. " : problems + " problems. ";
    assertEquals(count + "Nothing was written.", lines.get(lines.size() - 1));
  }

  @Test
  void threeBadRecordsLeaveTheOldSiteAsItWas() throws IOException {
    Path out = temp.resolve("site");
    assertEquals(0, Run.of("build", "--content", empty(), "--out", out).code());
    Map<String, byte[]> before = Folders.read(out);

    Run build = Run.of("build", "--content", content("three-at-once"), "--out", out);

    assertEquals(1, build.code());
    assertEquals("", build.out());
    String expected = Run.of("check", "--content", content("three-at-once")).err();
    assertEquals(expected.replace("Nothing was written", "No site was written"), build.err());
    Map<String, byte[]> after = Folders.read(out);
    assertEquals(before.keySet(), after.keySet());
    before.forEach((path, bytes) -> assertArrayEquals(bytes, after.get(path), path));
    assertEquals(List.of("site"), names(temp), "nothing is left beside the site");
  }

  @Test
  void threeBadRecordsWriteNoNewSite() throws IOException {
    Path out = temp.resolve("fresh");

    assertEquals(1, Run.of("build", "--content", content("three-at-once"), "--out", out).code());

    assertTrue(Files.notExists(out));
  }

  /** The mistake's files with the real schemas, in a folder named content. */
  private Path content(String mistake) throws IOException {
    Path content = empty();
    Folders.copy(BAD.resolve(mistake), content);
    Files.deleteIfExists(content.resolve(EXPECTED));
    return content;
  }

  private Path empty() throws IOException {
    Path content = Files.createTempDirectory(sources, "folder").resolve("content");
    Folders.copy(Folders.CONTENT.resolve("schema"), content.resolve("schema"));
    return content;
  }

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> paths = Files.list(folder)) {
      return paths.map(path -> path.getFileName().toString()).sorted().toList();
    }
  }
}
