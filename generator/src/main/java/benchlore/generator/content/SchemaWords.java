package benchlore.generator.content;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.Error;

/** A schema's terms in an author's words. */
final class SchemaWords {
  private SchemaWords() {}

  /** What was found where something else belongs. */
  static String wrongSort(Error error) {
    JsonNode node = error.getInstanceNode();
    if (node.isNull() || node.isMissingNode()) {
      return "nothing is written here";
    }
    String found =
        switch (node.getNodeType()) {
          case OBJECT -> "a group of fields";
          case ARRAY -> "a list";
          case NULL, MISSING -> "nothing";
          case NUMBER -> "the number `" + node.asText() + "`";
          case BOOLEAN -> "`" + node.asText() + "`";
          case STRING, BINARY, POJO -> "the text `" + brief(node.asText()) + "`";
        };
    return found + " stands where something else belongs";
  }

  private static String brief(String text) {
    String line = text.strip().replaceAll("\\s+", " ");
    return line.length() > 40 ? line.substring(0, 40) + " …" : line;
  }

  /** What a schema's type asks an author to write. */
  static String sort(String type) {
    return switch (type) {
      case "number" -> "Write a number, without its unit and without quotes.";
      case "integer" -> "Write a whole number.";
      case "string" -> "Write text; put quotes round it if it looks like a number.";
      case "boolean" -> "Write true or false.";
      case "array" -> "Write a list: [one, two], or one item a line starting with `- `.";
      case "object" -> "Write fields: { name: value, … }, or one a line below.";
      default -> "Write " + type + ".";
    };
  }

  /** How many items. */
  static String items(String count) {
    return count.equals("1") ? "one item" : count + " items";
  }
}
