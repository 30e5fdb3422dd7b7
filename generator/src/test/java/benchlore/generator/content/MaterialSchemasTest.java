package benchlore.generator.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.schedules.material.Adhesive;
import benchlore.schedules.material.Field;
import benchlore.schedules.material.FieldTable;
import benchlore.schedules.material.Finish;
import benchlore.schedules.material.Solvent;
import benchlore.schedules.material.Species;
import benchlore.schedules.present.NamedUnit;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What a record file may say of a material, and what the engine's table of it says, agree. */
final class MaterialSchemasTest {
  private static final Path SCHEMAS = Path.of("..", "content", "schema");
  private static final JsonMapper JSON = new JsonMapper();

  static Stream<Arguments> materials() {
    return Stream.of(
        Arguments.of("species", Species.table()),
        Arguments.of("adhesives", Adhesive.table()),
        Arguments.of("solvents", Solvent.table()),
        Arguments.of("finishes", Finish.table()));
  }

  private static JsonNode data(String kind) throws IOException {
    return read(kind).at("/properties/data");
  }

  private static JsonNode read(String name) throws IOException {
    return JSON.readTree(SCHEMAS.resolve(name + ".schema.json").toFile());
  }

  /** A solvent's id is the name of its file; its schema has it beside the data. */
  private static boolean inData(Field<?, ?> field) {
    return !field.key().equals("id");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("materials")
  void everyFieldIsInTheSchemaWithItsUnit(String kind, FieldTable<?> table) throws IOException {
    JsonNode common = read("common").path("$defs");
    for (Field<?, ?> field : table.fields()) {
      JsonNode property = data(kind).path("properties").path(field.key());
      assertTrue(!inData(field) || property.isObject(), "no " + field.key());
      if (field.limits().isPresent()) {
        String type = property.path("$ref").asText().replaceAll(".*/", "");
        JsonNode narrowed = property.at("/properties/unit/enum");
        JsonNode units =
            narrowed.isEmpty() ? common.path(type).at("/properties/unit/enum") : narrowed;
        assertTrue(!units.isEmpty(), field.key() + " has no unit");
        for (JsonNode unit : units) {
          assertEquals(
              field.limits().get().unit(),
              NamedUnit.find(unit.asText()).orElseThrow().unit(),
              field.key() + " " + unit);
        }
      }
    }
  }

  /** A compound is rubbed off again: the engine plans none. */
  @ParameterizedTest(name = "{0}")
  @MethodSource("materials")
  void wordsAreTheSame(String kind, FieldTable<?> table) throws IOException {
    for (Field<?, ?> field : table.fields()) {
      JsonNode property = data(kind).path("properties").path(field.key());
      JsonNode words = property.has("enum") ? property.path("enum") : property.at("/items/enum");
      Set<String> written = new TreeSet<>();
      words.forEach(word -> written.add(word.asText()));
      if (kind.equals("finishes") && field.key().equals("family")) {
        assertTrue(written.remove("compound"));
      }
      assertEquals(written, new TreeSet<>(field.words()), field.key());
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("materials")
  void whatTheEngineNeedsTheSchemaRequires(String kind, FieldTable<?> table) throws IOException {
    Set<String> required = new TreeSet<>();
    data(kind).path("required").forEach(key -> required.add(key.asText()));
    if (kind.equals("finishes")) {
      data(kind).at("/allOf/0/then/required").forEach(key -> required.add(key.asText()));
      // A stain or a filler may leave a stage out; the coating rules ask a film for each of these.
      required.removeAll(
          Set.of(
              "touch-dry", "recoat-opens", "sand-after", "handle-after", "light-use", "full-cure"));
      // No solvents at all is written as an empty list.
      required.remove("solvents");
    }
    for (Field<?, ?> field : table.fields()) {
      if (inData(field)) {
        assertEquals(required.contains(field.key()), field.required(), field.key());
      }
    }
  }
}
