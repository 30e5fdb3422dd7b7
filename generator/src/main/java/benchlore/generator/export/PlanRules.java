package benchlore.generator.export;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/**
 * What a plan file may hold, for the page that opens one: the plan's schema without what the page's
 * {@code project/rules.js} has no use for. So page and command line refuse the same keys and words.
 */
final class PlanRules {
  /** What the page's script reads; a rule it would pass over must not get into the schema. */
  private static final Set<String> READ =
      Set.of(
          "type",
          "properties",
          "required",
          "additionalProperties",
          "items",
          "enum",
          "pattern",
          "description",
          "minimum",
          "maximum",
          "minLength",
          "minItems",
          "maxItems",
          "minProperties",
          "maxProperties");

  private static final Set<String> NO_RULE = Set.of("$schema", "$id", "title");

  private PlanRules() {}

  /**
   * The rules of one value.
   *
   * @param schema a schema without references
   * @return the same without titles; refuses a keyword that the page does not know
   */
  static Map<String, Object> of(Map<?, ?> schema) {
    Map<String, Object> rules = new LinkedHashMap<>();
    for (Map.Entry<?, ?> entry : schema.entrySet()) {
      String keyword = (String) entry.getKey();
      if (READ.contains(keyword)) {
        rules.put(keyword, rule(keyword, entry.getValue()));
      } else if (!NO_RULE.contains(keyword)) {
        throw new IllegalArgumentException(
            "project/rules.js does not know `" + keyword + "` of the plan's schema: teach it");
      }
    }
    return rules;
  }

  private static Object rule(String keyword, Object value) {
    if (keyword.equals("items") && value instanceof Map<?, ?> items) {
      return of(items);
    } else if (keyword.equals("properties") && value instanceof Map<?, ?> properties) {
      Map<Object, Object> named = new LinkedHashMap<>();
      properties.forEach((name, schema) -> named.put(name, of((Map<?, ?>) schema)));
      return named;
    }
    return value;
  }
}
