package benchlore.generator.content;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import com.networknt.schema.serialization.NodeReader;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
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

  private final Map<String, JsonNode> documents;
  private final Map<String, Schema> schemas = new HashMap<>();
  private final SchemaRegistry registry;

  private SchemaSet(Map<String, JsonNode> documents) {
    this.documents = documents;
    // The validator takes texts, and reads them with what it is given: here the text of a schema
    // is its own address, and reading it a look-up, so that no schema is parsed a second time.
    Map<String, String> addresses = new HashMap<>();
    documents.keySet().forEach(address -> addresses.put(address, address));
    this.registry =
        SchemaRegistry.withDefaultDialect(
            SpecificationVersion.DRAFT_2020_12,
            builder -> builder.schemas(addresses).nodeReader(new Parsed(documents)));
  }

  /** Reads every {@code *.schema.json} of the folder. */
  static SchemaSet read(Path folder, FileReading reading) throws IOException {
    Map<String, JsonNode> documents = new HashMap<>();
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".schema.json")).sorted().toList()) {
        documents.put(BASE + file.getFileName(), reading.json(reading.bytes(file)));
      }
    }
    return new SchemaSet(documents);
  }

  /** Gives the validator the schemas already parsed, by their addresses. */
  private record Parsed(Map<String, JsonNode> documents) implements NodeReader {
    @Override
    public JsonNode readTree(String address, InputFormat format) throws IOException {
      JsonNode document = documents.get(address);
      if (document == null) {
        throw new IOException("no schema at " + address);
      }
      return document;
    }

    @Override
    public JsonNode readTree(InputStream address, InputFormat format) throws IOException {
      return readTree(new String(address.readAllBytes(), StandardCharsets.UTF_8), format);
    }
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
