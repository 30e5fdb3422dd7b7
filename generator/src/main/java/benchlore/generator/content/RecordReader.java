package benchlore.generator.content;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Makes records from trees that have passed their schema. */
final class RecordReader {
  private final Map<String, Source> sources;

  RecordReader(Map<String, Source> sources) {
    this.sources = sources;
  }

  static Source source(JsonNode root) {
    return new Source(
        root.path("id").asText(),
        root.path("title").asText(),
        root.path("publisher").asText(),
        root.path("year").asInt(0),
        root.path("kind").asText(),
        root.path("note").asText(""));
  }

  LibraryRecord entry(Kind kind, YamlFile yaml) {
    JsonNode root = yaml.root();
    List<Name> names = new ArrayList<>();
    root.path("names")
        .forEach(n -> names.add(new Name(n.path("name").asText(), n.path("use").asText())));
    List<MistakenFor> mistaken = new ArrayList<>();
    root.path("mistaken")
        .forEach(
            m ->
                mistaken.add(
                    new MistakenFor(
                        m.path("for").asText(""),
                        m.path("thing").asText(""),
                        m.path("tell").asText())));
    return new LibraryRecord(
        kind,
        root.path("id").asText(),
        root.path("title").asText(),
        names,
        strings(root.path("lay")),
        text(root),
        mistaken,
        strings(root.path("related")),
        drawings(root),
        new FactReader(yaml, sources).drawn(),
        new FactReader(yaml, sources).facts());
  }

  private static LibraryRecord.Text text(JsonNode root) {
    return new LibraryRecord.Text(
        root.path("looks").asText().strip(),
        root.path("does").asText().strip(),
        root.path("use").asText(),
        strings(root.path("wrong")),
        strings(root.path("safety")),
        root.path("body").asText(""));
  }

  private static List<LibraryRecord.Drawing> drawings(JsonNode root) {
    List<LibraryRecord.Drawing> drawings = new ArrayList<>();
    for (JsonNode sketch : root.path("sketches")) {
      String caption = sketch.path("caption").asText().strip();
      drawings.add(new LibraryRecord.Drawing(sketch.path("drawing").asText(), caption));
    }
    if (root.has("picture")) {
      drawings.add(new LibraryRecord.Drawing(root.path("picture").asText(), ""));
    }
    return drawings;
  }

  private static List<String> strings(JsonNode array) {
    List<String> strings = new ArrayList<>();
    array.forEach(node -> strings.add(node.asText().strip()));
    return strings;
  }
}
