package benchlore.generator.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.source.tree.AnnotationTree;
import com.sun.source.util.TreeScanner;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Words that must not stand in a source, and suppressions without a reason. */
final class TextRulesTest {
  private static final Pattern TEXT =
      Pattern.compile(".*\\.(java|ya?ml|json|html|peb|css|js|md|xml|sh|txt|csv)");

  /** Written by others, or made by the build. */
  private static final Pattern NOT_OURS =
      Pattern.compile(".*/(target|\\.git|vendor|axe|node_modules)/.*");

  /** Unfinished work and folders of one machine; split so that this file doesn't hold them. */
  private static final Pattern BANNED =
      Pattern.compile(
          "\\b(TO"
              + "DO|FIX"
              + "ME|XX"
              + "X)\\b|(?<![\\w.~])/(tmp|work|home|root|farm|Users)"
              + "/\\w|[A-Z]:\\\\\\\\?Users|lorem ip"
              + "sum");

  @Test
  void noBannedWords() throws IOException {
    List<String> found = new ArrayList<>();
    int read = 0;
    for (Path file : texts()) {
      List<String> lines =
          new String(Files.readAllBytes(file), StandardCharsets.UTF_8).lines().toList();
      read++;
      for (int i = 0; i < lines.size(); i++) {
        if (BANNED.matcher(lines.get(i)).find()) {
          found.add(Sources.ROOT.relativize(file) + ":" + (i + 1) + ": " + lines.get(i).strip());
        }
      }
    }
    assertTrue(read > 100, "only " + read + " files were read");
    assertEquals(List.of(), found);
  }

  @Test
  void everySuppressionHasItsReasonOnTheLine() throws IOException {
    List<String> bare = new ArrayList<>();
    int count = 0;
    for (Sources.Source source : Sources.all()) {
      for (long line : suppressions(source)) {
        count++;
        if (!source.lines().get((int) line - 1).matches(".*\\) *// \\S+ \\S+.*")) {
          bare.add(source.path() + ":" + line);
        }
      }
    }
    System.out.println("suppressions: " + count);
    assertEquals(List.of(), bare);
  }

  private static List<Long> suppressions(Sources.Source source) {
    List<Long> lines = new ArrayList<>();
    new TreeScanner<Void, Void>() {
      @Override
      public Void visitAnnotation(AnnotationTree tree, Void none) {
        if (tree.getAnnotationType().toString().equals("SuppressWarnings")) {
          long start = source.positions().getStartPosition(source.unit(), tree);
          lines.add(source.unit().getLineMap().getLineNumber(start));
        }
        return super.visitAnnotation(tree, null);
      }
    }.scan(source.unit(), null);
    return lines;
  }

  private static List<Path> texts() throws IOException {
    try (Stream<Path> files = Files.walk(Sources.ROOT)) {
      return files
          .filter(file -> TEXT.matcher(file.getFileName().toString()).matches())
          .filter(file -> !NOT_OURS.matcher(file.toString().replace('\\', '/')).matches())
          .filter(Files::isRegularFile)
          .sorted()
          .toList();
    }
  }
}
