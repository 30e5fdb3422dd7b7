package benchlore.generator.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.schedules.present.NamedUnit;
import benchlore.schedules.quantity.Unit;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The unit words of the schemas are words of the engine's one table of units. */
final class SchemaUnitsTest {
  private static final Path SCHEMAS = Path.of("../content/schema");

  /** The units of an amount in a plan: {@code ^...? (mm|m|in)$}. */
  private static final Pattern AMOUNT = Pattern.compile("\\? \\(([^()]+)\\)\\$$");

  @Test
  void everyUnitWordOfASchemaIsInTheTableAndThoseOfOneListAreOfOneKind() throws IOException {
    int lists = 0;
    for (List<String> words : unitLists()) {
      lists++;
      Set<Unit> kinds = new TreeSet<>();
      for (String word : words) {
        kinds.add(NamedUnit.find(word).orElseThrow(() -> new AssertionError(word)).unit());
      }
      boolean lengthOrFilm = kinds.equals(Set.of(Unit.METRE, Unit.MICRON));
      assertTrue(kinds.size() == 1 || lengthOrFilm || words.contains("ratio"), words + "");
    }
    assertTrue(lists > 20, "only " + lists + " lists of units found");
  }

  @Test
  void noSchemaNamesAUnitTwice() throws IOException {
    for (List<String> words : unitLists()) {
      assertEquals(words.size(), Set.copyOf(words).size(), words.toString());
    }
  }

  private static List<List<String>> unitLists() throws IOException {
    List<List<String>> lists = new ArrayList<>();
    try (Stream<Path> files = Files.list(SCHEMAS)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".json")).toList()) {
        collect(new ObjectMapper().readTree(Files.readString(file)), lists);
      }
    }
    return lists;
  }

  private static void collect(JsonNode node, List<List<String>> lists) {
    JsonNode unit = node.path("unit").path("enum");
    if (unit.isArray()) {
      List<String> words = new ArrayList<>();
      unit.forEach(word -> words.add(word.asText()));
      lists.add(words);
    }
    Matcher amount = AMOUNT.matcher(node.path("pattern").asText());
    if (amount.find()) {
      lists.add(List.of(amount.group(1).split("\\|")));
    }
    node.forEach(child -> collect(child, lists));
  }
}
