package benchlore.generator.library;

import benchlore.schedules.answer.Datum;
import benchlore.schedules.answer.Provenance;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Makes records from trees that have passed their schema. */
final class EntryReader {
  private final Map<String, Source> sources;

  EntryReader(Map<String, Source> sources) {
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

  Entry entry(Kind kind, JsonNode root) {
    List<Name> names = new ArrayList<>();
    root.path("names")
        .forEach(n -> names.add(new Name(n.path("name").asText(), n.path("use").asText())));
    List<Mistaken> mistaken = new ArrayList<>();
    root.path("mistaken")
        .forEach(
            m ->
                mistaken.add(
                    new Mistaken(
                        m.path("for").asText(""),
                        m.path("thing").asText(""),
                        m.path("tell").asText())));
    return new Entry(
        kind,
        root.path("id").asText(),
        root.path("title").asText(),
        names,
        strings(root.path("lay")),
        text(root),
        mistaken,
        strings(root.path("related")),
        facts(root));
  }

  private static Entry.Text text(JsonNode root) {
    return new Entry.Text(
        root.path("looks").asText().strip(),
        root.path("does").asText().strip(),
        root.path("use").asText(),
        strings(root.path("wrong")),
        strings(root.path("safety")),
        root.path("body").asText(""));
  }

  /** The data of a record, and of a plan or the shop, whose whole tree is data. */
  Facts facts(JsonNode root) {
    List<Fact.Group> figures = new ArrayList<>();
    root.path("figures").forEach(f -> figures.add((Fact.Group) fact(f)));
    JsonNode data = root.has("data") ? root.path("data") : root;
    return new Facts((Fact.Group) fact(data), figures);
  }

  private Fact fact(JsonNode node) {
    if (node.isObject()) {
      return node.has("from") && node.has("unit") ? measure(node) : group(node);
    }
    if (node.isArray()) {
      List<Fact> items = new ArrayList<>();
      node.forEach(item -> items.add(fact(item)));
      return new Fact.Items(items);
    }
    return node.isBoolean() ? new Fact.Flag(node.asBoolean()) : new Fact.Words(node.asText());
  }

  private Fact group(JsonNode node) {
    Map<String, Fact> facts = new LinkedHashMap<>();
    node.properties().forEach(field -> facts.put(field.getKey(), fact(field.getValue())));
    return new Fact.Group(facts);
  }

  private Fact measure(JsonNode node) {
    String unit = node.path("unit").asText();
    Units.Written written = Units.of(unit);
    JsonNode range = node.path("range");
    double low = (range.isArray() ? range.path(0) : node.path("value")).asDouble();
    double high = (range.isArray() ? range.path(1) : node.path("value")).asDouble();
    Datum datum =
        Datum.range(
            low * written.factor(), high * written.factor(), written.unit(), provenance(node));
    return new Fact.Measure(
        datum, unit, node.path("source").asText(""), node.path("note").asText(""));
  }

  private Provenance provenance(JsonNode node) {
    String note = node.path("note").asText("");
    return switch (node.path("from").asText()) {
      case "source" -> {
        Source source = sources.get(node.path("source").asText());
        String title =
            source.year() > 0 ? source.title() + " (" + source.year() + ")" : source.title();
        yield Provenance.source(title, node.path("where").asText());
      }
      case "common-practice" -> Provenance.commonPractice(note);
      default -> Provenance.fromMemory(note);
    };
  }

  private static List<String> strings(JsonNode array) {
    List<String> strings = new ArrayList<>();
    array.forEach(node -> strings.add(node.asText().strip()));
    return strings;
  }
}
