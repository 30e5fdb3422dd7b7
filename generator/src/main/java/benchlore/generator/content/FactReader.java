package benchlore.generator.content;

import benchlore.schedules.present.NamedUnit;
import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.SourcedRange;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Makes facts from a file that has passed its schema; each keeps where it was written. */
final class FactReader {
  private final YamlFile yaml;
  private final Map<String, Source> sources;

  FactReader(YamlFile yaml, Map<String, Source> sources) {
    this.yaml = yaml;
    this.sources = sources;
  }

  /** The data of a record, and of a plan or the shop, whose whole tree is data. */
  Facts facts() {
    JsonNode root = yaml.root();
    List<Fact.Group> figures = new ArrayList<>();
    for (int i = 0; i < root.path("figures").size(); i++) {
      figures.add((Fact.Group) fact(root.path("figures").get(i), "/figures/" + i));
    }
    String data = root.has("data") ? "/data" : "";
    return new Facts((Fact.Group) fact(root.at(data), data), figures);
  }

  /** The size a tool is drawn in; without facts where there is none. */
  Facts drawn() {
    return new Facts((Fact.Group) fact(drawnTree(), "/drawn"), List.of());
  }

  private JsonNode drawnTree() {
    return yaml.root().has("drawn")
        ? yaml.root().get("drawn")
        : JsonNodeFactory.instance.objectNode();
  }

  private Fact fact(JsonNode node, String pointer) {
    if (node.isObject()) {
      return node.has("from") && node.has("unit") ? measure(node, pointer) : group(node, pointer);
    }
    SourceLocation spot = yaml.spot(pointer);
    if (node.isArray()) {
      List<Fact> items = new ArrayList<>();
      for (int i = 0; i < node.size(); i++) {
        items.add(fact(node.get(i), pointer + "/" + i));
      }
      return new Fact.Items(items, spot);
    }
    return node.isBoolean()
        ? new Fact.Flag(node.asBoolean(), spot)
        : new Fact.Words(node.asText(), spot);
  }

  private Fact group(JsonNode node, String pointer) {
    Map<String, Fact> facts = new LinkedHashMap<>();
    node.properties()
        .forEach(
            field ->
                facts.put(field.getKey(), fact(field.getValue(), pointer + "/" + field.getKey())));
    return new Fact.Group(facts, yaml.spot(pointer));
  }

  private Fact measure(JsonNode node, String pointer) {
    String unit = node.path("unit").asText();
    NamedUnit written = NamedUnit.find(unit).orElseThrow();
    JsonNode range = node.path("range");
    double low = (range.isArray() ? range.path(0) : node.path("value")).asDouble();
    double high = (range.isArray() ? range.path(1) : node.path("value")).asDouble();
    SourcedRange datum =
        SourcedRange.range(
            written.toEngine(low), written.toEngine(high), written.unit(), provenance(node));
    return new Fact.Measure(
        datum,
        unit,
        node.path("source").asText(""),
        node.path("note").asText(""),
        yaml.spot(pointer));
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
}
