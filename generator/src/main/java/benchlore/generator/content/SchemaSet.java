package benchlore.generator.content;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * The JSON Schemas in {@code content/schema}: the one truth about what a record may hold, the same
 * for this loader and for an author's editor.
 */
final class SchemaSet {
  private static final String BASE = "https://benchlore.example/schema/";

  private static final String REFERENCE = "$ref";
  private static final ObjectMapper MAPPER = new ObjectMapper();

  private final Map<String, JsonNode> documents;
  private final Map<String, Schema> schemas = new HashMap<>();
  private final SchemaRegistry registry;

  private SchemaSet(Map<String, String> texts, Map<String, JsonNode> documents) {
    this.documents = documents;
    this.registry =
        SchemaRegistry.withDefaultDialect(
            SpecificationVersion.DRAFT_2020_12, builder -> builder.schemas(texts));
  }

  /** Reads every {@code *.schema.json} of the folder. */
  static SchemaSet read(Path folder) throws IOException {
    Map<String, String> texts = new HashMap<>();
    Map<String, JsonNode> documents = new HashMap<>();
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".schema.json")).sorted().toList()) {
        String text = Files.readString(file);
        texts.put(BASE + file.getFileName(), text);
        documents.put(BASE + file.getFileName(), MAPPER.readTree(text));
      }
    }
    return new SchemaSet(texts, documents);
  }

  /**
   * The schema of this name with every reference to another in its place; empty where the folder
   * has none of that name.
   */
  Map<String, Object> whole(String name) {
    JsonNode schema = documents.get(BASE + name + ".schema.json");
    return schema == null
        ? Map.of()
        : MAPPER.convertValue(resolved(schema), new TypeReference<Map<String, Object>>() {});
  }

  private JsonNode resolved(JsonNode node) {
    if (node.has(REFERENCE)) {
      String[] parts = node.path(REFERENCE).asText().split("#", 2);
      return resolved(documents.get(BASE + parts[0]).at(parts[1]));
    } else if (node.isObject()) {
      ObjectNode whole = MAPPER.createObjectNode();
      node.properties().forEach(field -> whole.set(field.getKey(), resolved(field.getValue())));
      return whole;
    }
    return node;
  }

  /** Checks a file against the schema of this name ({@code species}); gives every problem. */
  List<Problem> check(String name, YamlFile yaml) {
    Schema schema =
        schemas.computeIfAbsent(
            name, n -> registry.getSchema(SchemaLocation.of(BASE + n + ".schema.json")));
    List<Error> errors = schema.validate(yaml.root());
    return new SchemaProblems(yaml, documents).from(errors);
  }
}
