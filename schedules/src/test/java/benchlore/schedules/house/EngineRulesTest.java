package benchlore.schedules.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The engine depends on the JDK alone, and reads nothing it wasn't given. */
final class EngineRulesTest {
  private static final Path MAIN = Path.of("src", "main", "java");
  private static final String OWN = "benchlore.schedules.";

  private static final Set<String> JDK =
      Set.of("java.lang", "java.math", "java.util", "java.util.function");

  /** A name written in full, in an import or elsewhere. */
  private static final Pattern QUALIFIED =
      Pattern.compile(
          "\\b((?:java|javax|jdk|sun|org|com|net|io|benchlore)(?:\\.[a-z][a-z0-9]*)+)\\.[A-Z]");

  /** Clock, chance, locale, environment, files, threads, reflection. */
  private static final Pattern OUTSIDE =
      Pattern.compile(
          "\\bnow\\(|\\bSystem\\b|\\bRandom\\b|Math\\.random|getDefault\\(|\\bClock\\b|\\bThread\\b"
              + "|\\bRuntime\\b|\\bFiles\\b|\\bClass\\.forName|getClass\\(|\\bUUID\\b|\\bScanner\\b"
              + "|\\bsystemDefault\\(");

  @Test
  void itDependsOnTheJdkAlone() throws IOException {
    List<String> foreign = new ArrayList<>();
    for (Map.Entry<Path, String> source : sources().entrySet()) {
      Matcher names = QUALIFIED.matcher(source.getValue());
      while (names.find()) {
        String name = names.group(1);
        if (!JDK.contains(name) && !name.startsWith(OWN)) {
          foreign.add(source.getKey() + " uses " + name);
        }
      }
    }
    assertEquals(List.of(), foreign);
  }

  @Test
  void itReadsNothingItWasNotGiven() throws IOException {
    List<String> reading = new ArrayList<>();
    for (Map.Entry<Path, String> source : sources().entrySet()) {
      Matcher outside = OUTSIDE.matcher(source.getValue());
      while (outside.find()) {
        reading.add(source.getKey() + " uses " + outside.group());
      }
    }
    assertEquals(List.of(), reading);
  }

  /** Every source without its comments, by path. */
  private static Map<Path, String> sources() throws IOException {
    Map<Path, String> sources = new TreeMap<>();
    try (Stream<Path> files = Files.walk(MAIN)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
        if (!file.endsWith("package-info.java")) {
          String text = Files.readString(file);
          sources.put(file, text.replaceAll("(?s)/\\*.*?\\*/", "").replaceAll("(?m)//.*$", ""));
        }
      }
    }
    assertTrue(sources.size() > 50, "only " + sources.size() + " sources found");
    return sources;
  }
}
