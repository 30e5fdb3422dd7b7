package benchlore.generator.library;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.Error;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;

/** Turns a schema validator's errors into problems an author can act on, one for each cause. */
final class SchemaProblems {
  private final YamlFile yaml;
  private final Map<String, JsonNode> documents;

  SchemaProblems(YamlFile yaml, Map<String, JsonNode> documents) {
    this.yaml = yaml;
    this.documents = documents;
  }

  List<Problem> from(List<Error> errors) {
    Map<String, Problem> byPlaceAndText = new LinkedHashMap<>();
    for (Error error : errors) {
      Problem problem = problem(error);
      byPlaceAndText.putIfAbsent(problem.place() + problem.key() + problem.what(), problem);
    }
    return List.copyOf(byPlaceAndText.values());
  }

  private Problem problem(Error error) {
    String pointer = error.getInstanceLocation().toString();
    if (pointer.equals("/")) {
      pointer = "";
    }
    return switch (error.getKeyword() == null ? "" : error.getKeyword()) {
      case "additionalProperties", "unevaluatedProperties" -> unknown(error, pointer);
      case "required" -> missing(error, pointer);
      case "enum" -> notListed(error, pointer);
      case "type" -> at(pointer, wrongType(error), "Write " + article(error) + ".");
      case "oneOf" -> oneOf(error, pointer);
      case "minimum" ->
          at(
              pointer,
              "`" + error.getInstanceNode().asText() + "` is too small",
              "The least accepted is " + error.getSchemaNode().asText() + ".");
      case "pattern" ->
          at(
              pointer,
              "`" + error.getInstanceNode().asText() + "` has the wrong form",
              "It must match " + error.getSchemaNode().asText() + ".");
      case "minLength", "minItems" ->
          at(pointer, "this is empty or too short", "Write it out, or leave the field away.");
      case "not", "false" -> misplaced(pointer);
      default ->
          error.getSchemaNode() != null && error.getSchemaNode().isBoolean()
              ? misplaced(pointer)
              : at(pointer, error.getMessage(), "See the schema of this kind.");
    };
  }

  private Problem misplaced(String pointer) {
    String field = pointer.substring(pointer.lastIndexOf('/') + 1);
    return new Problem(
        yaml.positions().key(pointer),
        Positions.dotted(pointer),
        "the field `" + field + "` does not belong here",
        "Leave it away, or write `from: source` if this figure has a source.");
  }

  private Problem unknown(Error error, String pointer) {
    String field = error.getProperty();
    SortedSet<String> accepted = acceptedFields(error);
    String child = pointer + "/" + field;
    return new Problem(
        yaml.positions().key(child),
        Positions.dotted(child),
        "unknown field `" + field + "`",
        Suggestions.todo(field, accepted));
  }

  private SortedSet<String> acceptedFields(Error error) {
    JsonNode owner = owner(error);
    TreeSet<String> accepted = new TreeSet<>();
    owner.path("properties").fieldNames().forEachRemaining(accepted::add);
    if (error.getKeyword().equals("unevaluatedProperties")) {
      documents.forEach(
          (iri, document) ->
              document
                  .path("$defs")
                  .path("quantity")
                  .path("properties")
                  .fieldNames()
                  .forEachRemaining(accepted::add));
    }
    return accepted;
  }

  private JsonNode owner(Error error) {
    String iri = error.getSchemaLocation().getAbsoluteIri().toString();
    String fragment = error.getSchemaLocation().getFragment().toString();
    int slash = fragment.lastIndexOf('/');
    String parent = slash <= 0 ? "" : fragment.substring(0, slash);
    JsonNode document = documents.get(iri);
    return document == null
        ? com.fasterxml.jackson.databind.node.MissingNode.getInstance()
        : document.at(parent);
  }

  private Problem missing(Error error, String pointer) {
    String field = error.getProperty();
    return new Problem(
        yaml.positions().key(pointer),
        Positions.dotted(pointer),
        "the field `" + field + "` is missing",
        "Add it here" + described(error, field) + ".");
  }

  private String described(Error error, String field) {
    String text = owner(error).path("properties").path(field).path("description").asText("");
    return text.isEmpty() ? "" : ": " + text.replaceAll("\\.$", "");
  }

  private Problem notListed(Error error, String pointer) {
    List<String> accepted = new ArrayList<>();
    error.getSchemaNode().forEach(node -> accepted.add(node.asText()));
    String field = pointer.substring(pointer.lastIndexOf('/') + 1);
    String value = error.getInstanceNode().asText();
    String what =
        field.equals("unit")
            ? "the unit `" + value + "` does not fit here"
            : "`" + value + "` is not accepted here";
    return at(pointer, what, Suggestions.todo(value, accepted));
  }

  private Problem oneOf(Error error, String pointer) {
    JsonNode node = error.getInstanceNode();
    List<String> choices = new ArrayList<>();
    error
        .getSchemaNode()
        .forEach(c -> choices.add("`" + c.path("required").path(0).asText() + "`"));
    String list = String.join(" or ", choices);
    boolean none = choices.stream().noneMatch(c -> node.has(c.substring(1, c.length() - 1)));
    return new Problem(
        yaml.positions().key(pointer),
        Positions.dotted(pointer),
        none ? "a value is missing" : "two values where one belongs",
        "Write " + list + ", one of them.");
  }

  private Problem at(String pointer, String what, String todo) {
    return new Problem(yaml.positions().value(pointer), Positions.dotted(pointer), what, todo);
  }

  private static String wrongType(Error error) {
    JsonNode node = error.getInstanceNode();
    String found =
        node.isContainerNode() ? node.getNodeType().toString() : "`" + node.asText() + "`";
    return found.toLowerCase(java.util.Locale.ROOT) + " is the wrong sort of value";
  }

  private static String article(Error error) {
    return switch (error.getSchemaNode().asText()) {
      case "number" -> "a number";
      case "integer" -> "a whole number";
      case "string" -> "text; put quotes round it if it looks like a number";
      case "boolean" -> "true or false";
      case "array" -> "a list: [one, two] or one item a line starting with -";
      case "object" -> "fields: { name: value, … }";
      default -> "what the schema asks for";
    };
  }
}
