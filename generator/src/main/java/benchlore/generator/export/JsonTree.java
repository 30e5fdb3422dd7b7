package benchlore.generator.export;

import benchlore.schedules.exchange.Node;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.MissingNode;
import java.util.List;
import java.util.Map;

/** A value of parsed JSON text. */
final class JsonTree implements Node {
  private static final JsonMapper JSON =
      JsonMapper.builder()
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .build();

  private final JsonNode value;

  private JsonTree(JsonNode value) {
    this.value = value;
  }

  /**
   * The value a text holds.
   *
   * @throws IllegalArgumentException if it is no JSON, with line and column
   */
  static Node read(String text) {
    try {
      JsonNode value = JSON.readTree(text);
      return new JsonTree(value == null ? MissingNode.getInstance() : value);
    } catch (JsonProcessingException e) {
      String place =
          e.getLocation() == null
              ? ""
              : " at line "
                  + e.getLocation().getLineNr()
                  + ", column "
                  + e.getLocation().getColumnNr();
      throw new IllegalArgumentException("no JSON" + place + ": " + e.getOriginalMessage(), e);
    }
  }

  @Override
  public Kind kind() {
    return switch (value.getNodeType()) {
      case BOOLEAN -> Kind.FLAG;
      case NUMBER -> Double.isFinite(value.doubleValue()) ? Kind.NUMBER : Kind.ABSENT;
      case STRING -> Kind.TEXT;
      case ARRAY -> Kind.LIST;
      case OBJECT -> Kind.OBJECT;
      case NULL, MISSING, BINARY, POJO -> Kind.ABSENT;
    };
  }

  @Override
  public boolean flag() {
    return value.booleanValue();
  }

  @Override
  public double number() {
    return value.doubleValue();
  }

  @Override
  public String text() {
    return value.textValue();
  }

  @Override
  public int size() {
    return value.size();
  }

  @Override
  public Node item(int index) {
    return new JsonTree(value.path(index));
  }

  @Override
  public Node field(String key) {
    return new JsonTree(value.path(key));
  }

  @Override
  public List<String> keys() {
    return value.properties().stream().map(Map.Entry::getKey).toList();
  }
}
