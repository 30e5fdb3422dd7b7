package benchlore.generator.export;

import benchlore.schedules.exchange.EngineJson;
import benchlore.schedules.exchange.Node;
import benchlore.schedules.exchange.Sink;
import java.util.ArrayDeque;
import java.util.Deque;

/**
 * Writes an answer as JSON text (RFC 8259), letter for letter as a browser's {@code JSON.stringify}
 * writes the object its engine gives for the same request.
 */
public final class JsonText implements Sink {
  private final StringBuilder out = new StringBuilder();
  private final Deque<Boolean> lists = new ArrayDeque<>();
  private final String indent;
  private boolean first = true;

  /**
   * Prepares to write.
   *
   * @param indented each value on a line of its own, two spaces deeper a level; otherwise no space
   */
  public JsonText(boolean indented) {
    this.indent = indented ? "  " : "";
  }

  /** Has a request answered, both as text. */
  public static String answer(EngineJson.Call call, String request) {
    JsonText text = new JsonText(false);
    Node node;
    try {
      node = JsonTree.read(request);
    } catch (IllegalArgumentException e) {
      text.open("", false);
      text.flag("given", false);
      text.text("broken", e.getMessage());
      text.close();
      return text.text();
    }
    call.answer(node, text);
    return text.text();
  }

  /** What was written. */
  public String text() {
    return out.toString();
  }

  private void key(String key) {
    if (!first) {
      out.append(',');
    }
    line();
    first = false;
    if (!key.isEmpty()) {
      quoted(key);
      out.append(indent.isEmpty() ? ":" : ": ");
    }
  }

  private void line() {
    if (!indent.isEmpty() && !lists.isEmpty()) {
      out.append('\n').append(indent.repeat(lists.size()));
    }
  }

  @Override
  public void open(String key, boolean list) {
    key(key);
    out.append(list ? '[' : '{');
    lists.push(list);
    first = true;
  }

  @Override
  public void close() {
    boolean list = lists.pop();
    if (!first) {
      if (!indent.isEmpty()) {
        out.append('\n').append(indent.repeat(lists.size()));
      }
    }
    first = false;
    out.append(list ? ']' : '}');
  }

  @Override
  public void number(String key, double value) {
    key(key);
    out.append(ShortestDecimal.text(value));
  }

  @Override
  public void flag(String key, boolean value) {
    key(key);
    out.append(value);
  }

  @Override
  public void text(String key, String value) {
    key(key);
    quoted(value);
  }

  @Override
  public void nothing(String key) {
    key(key);
    out.append("null");
  }

  private void quoted(String value) {
    out.append('"');
    for (int i = 0; i < value.length(); i++) {
      char c = value.charAt(i);
      switch (c) {
        case '"', '\\' -> out.append('\\').append(c);
        case '\b' -> out.append("\\b");
        case '\f' -> out.append("\\f");
        case '\n' -> out.append("\\n");
        case '\r' -> out.append("\\r");
        case '\t' -> out.append("\\t");
        default -> plain(value, i, c);
      }
    }
    out.append('"');
  }

  private void plain(String value, int i, char c) {
    boolean alone =
        Character.isHighSurrogate(c)
            ? i + 1 == value.length() || !Character.isLowSurrogate(value.charAt(i + 1))
            : Character.isLowSurrogate(c)
                && (i == 0 || !Character.isHighSurrogate(value.charAt(i - 1)));
    if (c < ' ' || alone) {
      out.append(String.format("\\u%04x", (int) c));
    } else {
      out.append(c);
    }
  }
}
