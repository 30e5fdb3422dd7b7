package benchlore.schedules.quantity.guard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/**
 * The engine's sources give the same digits on the JVM and, compiled to JavaScript, in a browser.
 */
class EngineSourcesTest {
  private static final Path SOURCES = Path.of("src/main/java");

  /** What is allowed all the same, by file and code, each with its reason. */
  private static final Map<String, String> ALLOWED =
      Map.of(
          "Numeric.java: (int)k", "k is at most 1075 after the range check above it",
          "Numeric.java: (int)x", "the range check stands on the line above",
          "Numeric.java: (long)x", "the range check stands on the line above",
          "Numeric.java: (long)whole", "x was checked to be within a thousand million",
          "Numeric.java: (long)(scaled - whole * power)", "below a million by construction");

  @Test
  void keepTheNumericRules() throws IOException {
    List<Finding> broken = new ArrayList<>();
    Map<String, String> unused = new TreeMap<>(ALLOWED);
    for (Finding finding : Sources.under(SOURCES)) {
      String key = finding.file() + ": " + finding.code();
      if (ALLOWED.containsKey(key)) {
        unused.remove(key);
      } else {
        broken.add(finding);
      }
    }
    assertTrue(broken.isEmpty(), () -> lines(broken));
    assertEquals(Map.of(), unused, "allowed, but no longer there");
  }

  private static String lines(List<Finding> findings) {
    StringBuilder text = new StringBuilder(findings.size() + " findings");
    for (Finding finding : findings) {
      text.append('\n').append(finding);
    }
    return text.toString();
  }
}
