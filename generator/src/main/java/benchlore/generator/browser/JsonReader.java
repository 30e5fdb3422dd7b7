package benchlore.generator.browser;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads JSON text (RFC 8259) into maps, lists, strings, doubles, booleans and null.
 *
 * <p>Numbers are put together from {@code + - * /} alone so that both platforms get the same bits:
 * exact for up to 15 digits and powers of ten to 22, beyond that within two units of the last
 * place.
 */
final class JsonReader {
  private static final int DEEPEST = 40;
  private static final int MOST_DIGITS = 17;
  private final String text;
  private int at;

  private JsonReader(String text) {
    this.text = text;
  }

  /** The value the text holds; an {@link IllegalArgumentException} tells where it is no JSON. */
  static Object read(String text) {
    JsonReader reader = new JsonReader(text);
    Object value = reader.value(0);
    reader.blank();
    if (reader.at < text.length()) {
      throw reader.broken("nothing more");
    }
    return value;
  }

  private IllegalArgumentException broken(String wanted) {
    return new IllegalArgumentException("JSON: expected " + wanted + " at character " + at);
  }

  private char peek() {
    return at < text.length() ? text.charAt(at) : '\0';
  }

  private void blank() {
    while (peek() == ' ' || peek() == '\n' || peek() == '\t' || peek() == '\r') {
      at++;
    }
  }

  private boolean skip(char wanted) {
    blank();
    if (peek() == wanted) {
      at++;
      return true;
    }
    return false;
  }

  private void expect(char wanted) {
    if (!skip(wanted)) {
      throw broken("'" + wanted + "'");
    }
  }

  private Object value(int depth) {
    if (depth > DEEPEST) {
      throw broken("no deeper nesting");
    }
    blank();
    return switch (peek()) {
      case '{' -> object(depth);
      case '[' -> list(depth);
      case '"' -> string();
      case 't' -> word("true", true);
      case 'f' -> word("false", false);
      case 'n' -> word("null", null);
      default -> number();
    };
  }

  private Object word(String word, Object value) {
    if (!text.startsWith(word, at)) {
      throw broken(word);
    }
    at = at + word.length();
    return value;
  }

  private Map<String, Object> object(int depth) {
    Map<String, Object> object = new LinkedHashMap<>();
    expect('{');
    if (skip('}')) {
      return object;
    }
    do {
      blank();
      String key = string();
      expect(':');
      object.put(key, value(depth + 1));
    } while (skip(','));
    expect('}');
    return object;
  }

  private List<Object> list(int depth) {
    List<Object> list = new ArrayList<>();
    expect('[');
    if (skip(']')) {
      return list;
    }
    do {
      list.add(value(depth + 1));
    } while (skip(','));
    expect(']');
    return list;
  }

  private String string() {
    if (peek() != '"') {
      throw broken("'\"'");
    }
    at++;
    StringBuilder string = new StringBuilder();
    while (peek() != '"') {
      if (peek() < ' ') {
        throw broken("a character or '\"'");
      }
      char c = text.charAt(at++);
      string.append(c == '\\' ? escape() : c);
    }
    at++;
    return string.toString();
  }

  private char escape() {
    char c = peek();
    at++;
    return switch (c) {
      case '"', '\\', '/' -> c;
      case 'b' -> '\b';
      case 'f' -> '\f';
      case 'n' -> '\n';
      case 'r' -> '\r';
      case 't' -> '\t';
      case 'u' -> unicode();
      default -> throw broken("an escape");
    };
  }

  private char unicode() {
    int code = 0;
    for (int i = 0; i < 4; i++) {
      int digit = "0123456789abcdef0000000000ABCDEF".indexOf(peek());
      if (digit < 0) {
        throw broken("four hexadecimal digits");
      }
      code = code * 16 + (digit & 15);
      at++;
    }
    return (char) code;
  }

  private boolean digit() {
    return peek() >= '0' && peek() <= '9';
  }

  private Double number() {
    boolean negative = peek() == '-';
    at = negative ? at + 1 : at;
    if (!digit()) {
      throw broken("a value");
    }
    double[] digits = {0, 0};
    int power = whole(digits);
    if (peek() == '.') {
      at++;
      power = power + fraction(digits);
    }
    if (peek() == 'e' || peek() == 'E') {
      at++;
      power = power + exponent();
    }
    double value = scaled(digits[0], power);
    return negative ? -value : value;
  }

  /** Takes digits up to the point; returns how many were too many to keep. */
  private int whole(double[] digits) {
    int dropped = 0;
    while (digit()) {
      dropped = keep(digits) ? dropped : dropped + 1;
    }
    return dropped;
  }

  private int fraction(double[] digits) {
    int kept = 0;
    if (!digit()) {
      throw broken("a digit");
    }
    while (digit()) {
      kept = keep(digits) ? kept - 1 : kept;
    }
    return kept;
  }

  private boolean keep(double[] digits) {
    int digit = peek() - '0';
    at++;
    if (digits[1] >= MOST_DIGITS) {
      return false;
    }
    digits[0] = digits[0] * 10 + digit;
    digits[1] = digits[0] > 0 ? digits[1] + 1 : 0;
    return true;
  }

  private int exponent() {
    boolean negative = peek() == '-';
    if (negative || peek() == '+') {
      at++;
    }
    if (!digit()) {
      throw broken("a digit");
    }
    int power = 0;
    while (digit()) {
      power = Math.min(9999, power * 10 + (peek() - '0'));
      at++;
    }
    return negative ? -power : power;
  }

  private static double scaled(double digits, int power) {
    double value = digits;
    int left = Math.min(400, Math.abs(power));
    while (left > 0) {
      int step = Math.min(left, 22);
      double ten = 1;
      for (int i = 0; i < step; i++) {
        ten = ten * 10;
      }
      value = power > 0 ? value * ten : value / ten;
      left = left - step;
    }
    return value;
  }
}
