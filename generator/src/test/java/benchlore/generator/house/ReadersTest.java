package benchlore.generator.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every rule has a reader: an entry of the engine that nobody asks is work for nobody. */
final class ReadersTest {
  private static final Path ENGINE =
      Sources.ROOT.resolve("schedules/src/main/java/benchlore/schedules");
  private static final Path GENERATOR =
      Sources.ROOT.resolve("generator/src/main/java/benchlore/generator");
  private static final Path EXPORTS =
      Sources.ROOT.resolve("generator/src/main/java/benchlore/generator/browser/EngineEntry.java");
  private static final Path MODULES = Sources.ROOT.resolve("site-template/js");

  private static final List<String> TRADES =
      List.of("air", "coating", "cutting", "glueup", "movement", "sanding");

  /** An entry of a trade: its name and what it is asked with. */
  private static final Pattern ENTRY =
      Pattern.compile("public static Answer<[\\w.]+> (\\w+)\\(\\s*([\\w.]+) ");

  private static final Pattern EXPORT =
      Pattern.compile("public static (?:JSObject|String|double) (\\w+)\\(");

  /** The version is for whoever looks at the script. */
  private static final List<String> UNREAD_EXPORTS = List.of("engineVersion");

  @Test
  void everyEntryOfATradeIsAskedByOtherCode() throws IOException {
    SortedMap<Path, String> code = new TreeMap<>();
    for (Path file : files(ENGINE, ".java")) {
      code.put(file, Files.readString(file));
    }
    for (Path file : files(GENERATOR, ".java")) {
      code.put(file, Files.readString(file));
    }
    String askers = exchanged(code);
    List<String> unread = new ArrayList<>();
    int entries = 0;
    for (String trade : TRADES) {
      for (Path file : files(ENGINE.resolve(trade), ".java")) {
        String owner = file.getFileName().toString().replace(".java", "");
        String source = code.get(file);
        for (MatchResult entry : ENTRY.matcher(source).results().toList()) {
          entries++;
          // Of entries of one name, what each is asked with tells them apart.
          boolean alone = source.split(" " + entry.group(1) + "\\(", -1).length == 2;
          boolean asked =
              called(owner + "." + entry.group(1) + "(", file, code)
                  && (alone || askers.contains(entry.group(2)));
          if (!asked) {
            unread.add(owner + "." + entry.group(1) + "(" + entry.group(2) + ")");
          }
        }
      }
    }
    assertTrue(entries > 10, "only " + entries + " entries were found");
    assertEquals(List.of(), unread.stream().sorted().toList());
  }

  private static boolean called(String call, Path but, SortedMap<Path, String> code) {
    return code.entrySet().stream()
        .anyMatch(file -> !file.getKey().equals(but) && file.getValue().contains(call));
  }

  /** The code that reads requests and plans projects. */
  private static String exchanged(SortedMap<Path, String> code) {
    StringBuilder text = new StringBuilder();
    code.forEach(
        (file, source) -> {
          if (file.startsWith(ENGINE.resolve("exchange"))
              || file.startsWith(ENGINE.resolve("project"))) {
            text.append(source);
          }
        });
    return text.toString();
  }

  @Test
  void everyExportOfTheEngineIsAskedByAPage() throws IOException {
    String modules = text(MODULES, ".js");
    List<String> unread = new ArrayList<>();
    for (MatchResult export : EXPORT.matcher(Files.readString(EXPORTS)).results().toList()) {
      if (!modules.contains("engine." + export.group(1) + "(")) {
        unread.add(export.group(1));
      }
    }
    assertEquals(UNREAD_EXPORTS, unread);
  }

  private static String text(Path folder, String end) throws IOException {
    StringBuilder text = new StringBuilder();
    for (Path file : files(folder, end)) {
      text.append(Files.readString(file));
    }
    return text.toString();
  }

  private static List<Path> files(Path folder, String end) throws IOException {
    try (Stream<Path> found = Files.walk(folder)) {
      return found
          .filter(path -> path.toString().endsWith(end))
          .sorted()
          .collect(Collectors.toList());
    }
  }
}
