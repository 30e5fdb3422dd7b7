package benchlore.generator.export;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Records of the engine in few bytes: a table has its keys once and a list of values a row; a
 * figure with its provenance is a list that begins with a number (low, high where it differs, unit,
 * source), a provenance alone {@code {"~":source}}; units and sources are places in their lists.
 *
 * <p>Not immutable: it gathers units and sources as it folds. No list in these records begins with
 * a number but for those made here.
 */
final class Folded {
  private final List<String> units = new ArrayList<>();
  private final List<List<String>> sources = new ArrayList<>();

  /** The units met, in the order met. */
  List<String> units() {
    return units;
  }

  /** The provenances met: kind, title, where. */
  List<List<String>> sources() {
    return sources;
  }

  /** Records of one type. */
  Map<String, Object> table(List<?> records) {
    List<String> keys = new ArrayList<>();
    List<Object> rows = new ArrayList<>();
    for (Object record : records) {
      JsonNode tree = RequestJson.tree(record);
      if (keys.isEmpty()) {
        tree.fieldNames().forEachRemaining(keys::add);
      }
      List<Object> row = new ArrayList<>();
      tree.forEach(field -> row.add(folded(field)));
      rows.add(row);
    }
    Map<String, Object> table = new LinkedHashMap<>();
    table.put("keys", keys);
    table.put("rows", rows);
    return table;
  }

  /** One record. */
  Object value(Object record) {
    return folded(RequestJson.tree(record));
  }

  private Object folded(JsonNode value) {
    return switch (value.getNodeType()) {
      case NUMBER -> number(value);
      case BOOLEAN -> value.booleanValue();
      case STRING -> value.textValue();
      case ARRAY -> list(value);
      case OBJECT -> object(value);
      case NULL, MISSING, BINARY, POJO -> null;
    };
  }

  private static BigDecimal number(JsonNode value) {
    return new BigDecimal(ShortestDecimal.text(value.doubleValue()));
  }

  private List<Object> list(JsonNode value) {
    List<Object> list = new ArrayList<>();
    value.forEach(item -> list.add(folded(item)));
    return list;
  }

  private Object object(JsonNode value) {
    if (value.has("low") && value.has("unit")) {
      return figure(value);
    }
    if (value.has("kind") && value.has("where")) {
      return Map.of("~", source(value));
    }
    Map<String, Object> object = new LinkedHashMap<>();
    value.forEachEntry((key, field) -> object.put(key, folded(field)));
    return object;
  }

  private List<Object> figure(JsonNode value) {
    List<Object> figure = new ArrayList<>();
    figure.add(number(value.path("low")));
    if (!value.path("low").equals(value.path("high"))) {
      figure.add(number(value.path("high")));
    }
    figure.add(place(units, value.path("unit").textValue()));
    figure.add(source(value.path("from")));
    return figure;
  }

  private int source(JsonNode from) {
    return place(
        sources,
        List.of(
            from.path("kind").textValue(),
            from.path("title").textValue(),
            from.path("where").textValue()));
  }

  private static <T> int place(List<T> list, T value) {
    int place = list.indexOf(value);
    if (place < 0) {
      list.add(value);
      return list.size() - 1;
    }
    return place;
  }
}
