package benchlore.generator.content;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import com.networknt.schema.Error;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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
    Map<Place, Problem> byPlace = new LinkedHashMap<>();
    List<Problem> missing = new ArrayList<>();
    for (Error error : errors) {
      Optional<Problem> problem = problem(error, pointer(error));
      if (problem.isPresent() && error.getKeyword().equals("required")) {
        missing.add(problem.get());
      } else if (problem.isPresent()) {
        byPlace.putIfAbsent(problem.get().place(), problem.get());
      }
    }
    // Several fields may be missing at one place; anything else there has one cause.
    List<Problem> all = new ArrayList<>(byPlace.values());
    missing.stream().distinct().forEach(all::add);
    return all;
  }

  private static String pointer(Error error) {
    String pointer = error.getInstanceLocation().toString();
    return pointer.equals("/") ? "" : pointer;
  }

  private Optional<Problem> problem(Error error, String pointer) {
    return switch (error.getKeyword()) {
      case "additionalProperties", "unevaluatedProperties" -> unknown(error, pointer);
      case "required" -> missing(error, pointer);
      case "enum", "const" -> Optional.of(notListed(error, pointer));
      case "oneOf" -> oneOf(error, pointer);
      case "not", "false", "properties" -> Optional.of(misplaced(pointer));
      default -> Optional.of(value(error, pointer));
    };
  }

  /** A value of the wrong sort, form or size. */
  private Problem value(Error error, String pointer) {
    String limit = error.getSchemaNode().asText();
    String text = "`" + error.getInstanceNode().asText() + "`";
    SourceLocation spot = yaml.spot(pointer);
    return switch (error.getKeyword()) {
      case "type" -> spot.problem(SchemaWords.wrongSort(error), sort(error));
      case "minimum" ->
          spot.problem(text + " is too small", "The least accepted is " + limit + ".");
      case "maximum" -> spot.problem(text + " is too large", "The most accepted is " + limit + ".");
      case "exclusiveMinimum" ->
          spot.problem(text + " is too small", "Write more than " + limit + ".");
      case "pattern" -> spot.problem(text + " has the wrong form", form(error));
      case "minLength" -> spot.problem("this text is too short", "Write it out.");
      case "minItems" ->
          spot.problem(
              "this list is too short", "Write at least " + SchemaWords.items(limit) + ".");
      case "maxItems" ->
          spot.problem(
              "this list is too long", "Write no more than " + SchemaWords.items(limit) + ".");
      case "uniqueItems" -> spot.problem("an item of this list is written twice", "Keep one.");
      case "minProperties", "maxProperties" ->
          spot.problem(
              "this takes exactly one of its fields",
              "Write one of: " + String.join(", ", fields(owner(error))) + ".");
      default -> spot.problem(error.getMessage(), "See the schema of this kind of file.");
    };
  }

  private String sort(Error error) {
    return owner(error).has("pattern")
        ? form(error)
        : SchemaWords.sort(error.getSchemaNode().asText());
  }

  private String form(Error error) {
    String description = owner(error).path("description").asText("");
    return description.isEmpty()
        ? "It must match " + owner(error).path("pattern").asText() + "."
        : "Write " + description.replaceAll("\\.$", "") + ".";
  }

  private Problem misplaced(String pointer) {
    String field = pointer.substring(pointer.lastIndexOf('/') + 1);
    boolean ofSource = field.equals("source") || field.equals("where");
    return yaml.keySpot(pointer)
        .problem(
            "the field `" + field + "` does not belong here",
            ofSource
                ? "Write `from: source` if this source was seen for the figure, else leave it away."
                : "Leave it away.");
  }

  private Optional<Problem> unknown(Error error, String pointer) {
    String field = error.getProperty();
    Set<String> accepted = fields(owner(error));
    if (error.getKeyword().equals("unevaluatedProperties")) {
      // The validator forgets the shared fields of a quantity as soon as one of them is wrong.
      for (JsonNode document : documents.values()) {
        accepted.addAll(fields(document.at("/$defs/quantity")));
      }
    }
    if (accepted.contains(field)) {
      return Optional.empty();
    }
    return Optional.of(
        yaml.keySpot(pointer + "/" + field)
            .problem("unknown field `" + field + "`", Suggestions.todo(field, accepted)));
  }

  private static Set<String> fields(JsonNode schema) {
    Set<String> names = new TreeSet<>();
    schema.path("properties").fieldNames().forEachRemaining(names::add);
    return names;
  }

  /** The schema object that holds the keyword which failed. */
  private JsonNode owner(Error error) {
    return document(error).at(parent(fragment(error)));
  }

  private JsonNode document(Error error) {
    String iri = error.getSchemaLocation().getAbsoluteIri().toString();
    return documents.getOrDefault(iri, MissingNode.getInstance());
  }

  private static String fragment(Error error) {
    return error.getSchemaLocation().getFragment().toString();
  }

  private static String parent(String pointer) {
    return pointer.substring(0, Math.max(0, pointer.lastIndexOf('/')));
  }

  private Optional<Problem> missing(Error error, String pointer) {
    if (error.getEvaluationPath().toString().contains("/oneOf/")) {
      return Optional.empty();
    }
    String field = error.getProperty();
    String hint = hint(owner(error).path("properties").path(field));
    if (hint.isEmpty()) {
      // A condition such as `then` names fields that the schema around it describes.
      hint =
          hint(document(error).at(parent(parent(fragment(error)))).path("properties").path(field));
    }
    return Optional.of(
        yaml.keySpot(pointer)
            .problem(
                "the field `" + field + "` is missing",
                hint.isEmpty() ? "Add it here." : "Add it here: " + hint + "."));
  }

  /** What a field takes, in a few words; empty if its schema doesn't say. */
  private String hint(JsonNode field) {
    if (field.has("description")) {
      return field.path("description").asText().replaceAll("\\.$", "");
    } else if (field.has("enum")) {
      List<String> words = new ArrayList<>();
      field.path("enum").forEach(word -> words.add(word.asText()));
      return String.join(", ", words);
    } else if (field.has("$ref")) {
      return hint(referred(field.path("$ref").asText()));
    }
    return field.path("type").asText().equals("boolean") ? "true or false" : "";
  }

  private JsonNode referred(String ref) {
    String fragment = ref.substring(ref.indexOf('#') + 1);
    for (JsonNode document : documents.values()) {
      if (!document.at(fragment).isMissingNode()) {
        return document.at(fragment);
      }
    }
    return MissingNode.getInstance();
  }

  private Problem notListed(Error error, String pointer) {
    List<String> accepted = new ArrayList<>();
    JsonNode listed = error.getSchemaNode();
    if (listed.isArray()) {
      listed.forEach(node -> accepted.add(node.asText()));
    } else {
      accepted.add(listed.asText());
    }
    String field = pointer.substring(pointer.lastIndexOf('/') + 1);
    String value = "`" + error.getInstanceNode().asText() + "`";
    String what =
        field.equals("unit")
            ? "the unit " + value + " does not fit here"
            : value + " is not accepted here";
    return yaml.spot(pointer)
        .problem(what, Suggestions.todo(error.getInstanceNode().asText(), accepted));
  }

  private Optional<Problem> oneOf(Error error, String pointer) {
    if (!error.getInstanceNode().isObject()) {
      return Optional.empty();
    }
    List<String> choices = new ArrayList<>();
    error.getSchemaNode().forEach(choice -> choices.add(choice.at("/required/0").asText()));
    boolean none = choices.stream().noneMatch(error.getInstanceNode()::has);
    return Optional.of(
        yaml.keySpot(pointer)
            .problem(
                none ? "a value is missing" : "two values where one belongs",
                "Write `" + String.join("` or `", choices) + "`, one of them."));
  }
}
