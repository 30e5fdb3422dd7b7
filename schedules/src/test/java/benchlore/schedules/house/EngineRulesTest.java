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
import java.util.TreeSet;
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

  /** Packages and those they may use; an arrow back would be a ring. */
  private static final Map<String, Set<String>> MAY_USE =
      Map.ofEntries(
          Map.entry("answer", Set.of("numeric")),
          Map.entry("numeric", Set.of()),
          Map.entry("time", Set.of("numeric")),
          Map.entry("room", Set.of("answer", "numeric", "time")),
          Map.entry("trade", Set.of("answer", "numeric")),
          Map.entry("air", Set.of("answer", "numeric", "room", "trade")),
          Map.entry("sanding", Set.of("answer", "numeric", "trade")),
          Map.entry("wood", Set.of("answer", "numeric", "room", "trade")),
          Map.entry("cutting", Set.of("answer", "numeric")),
          Map.entry("glueup", Set.of("answer", "time", "numeric", "room", "wood")),
          Map.entry("coating", Set.of("answer", "time", "numeric", "room", "trade")),
          Map.entry(
              "plan",
              Set.of(
                  "answer", "numeric", "time", "room", "trade", "air", "sanding", "wood", "cutting",
                  "glueup", "coating")));

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

  @Test
  void packagesUseOnlyWhatTheyMay() throws IOException {
    List<String> broken = new ArrayList<>();
    for (Map.Entry<Path, String> source : sources().entrySet()) {
      String own = source.getKey().getParent().getFileName().toString();
      assertTrue(MAY_USE.containsKey(own), own + " has no line in the table");
      Matcher qualified = QUALIFIED.matcher(source.getValue());
      while (qualified.find()) {
        String name = qualified.group(1).replace(OWN, "");
        boolean engine = qualified.group(1).startsWith(OWN);
        if (engine && !name.equals(own) && !MAY_USE.get(own).contains(name)) {
          broken.add(source.getKey() + " uses " + name);
        }
      }
    }
    assertEquals(List.of(), broken);
  }

  @Test
  void noRingOfPackages() {
    Set<String> placed = new TreeSet<>();
    boolean more = true;
    while (more) {
      more = false;
      for (Map.Entry<String, Set<String>> entry : MAY_USE.entrySet()) {
        if (placed.containsAll(entry.getValue())) {
          more |= placed.add(entry.getKey());
        }
      }
    }
    assertEquals(new TreeSet<>(MAY_USE.keySet()), placed, "the others stand in a ring");
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
