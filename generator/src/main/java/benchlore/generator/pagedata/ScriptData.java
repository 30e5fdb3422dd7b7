package benchlore.generator.pagedata;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;

/**
 * Data for a page's script.
 *
 * <p>The data is a string literal handed to {@code JSON.parse}, which a browser reads faster than a
 * literal object, in a classic script, since pages opened from a disk can't fetch.
 */
public final class ScriptData {
  private static final ObjectMapper JSON = new ObjectMapper();

  private ScriptData() {}

  /**
   * The script that sets a global to the data.
   *
   * @param global name under {@code window}
   * @param data plain maps, lists, strings and numbers
   * @return JavaScript
   */
  public static String script(String global, Object data) {
    return "window." + global + " = JSON.parse(" + json(json(data)) + ");\n";
  }

  private static String json(Object value) {
    try {
      // A closing script tag or a line separator inside the literal must not end it.
      return JSON.writeValueAsString(value)
          .replace("<", "\\u003c")
          .replace("\u2028", "\\u2028")
          .replace("\u2029", "\\u2029");
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("plain maps always serialise", e);
    }
  }
}
