package benchlore.generator.browser;

import benchlore.schedules.numeric.Numeric;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Writes JSON text: numbers with twelve digits, the same on both platforms, and a fingerprint over
 * every bit of every number, so that two answers can be compared closer than their text.
 */
final class JsonWriter {
  private static final double LEAST_OF_TWELVE_DIGITS = 1e11;
  private static final int DIGITS = 12;
  private final StringBuilder out = new StringBuilder();
  private boolean first = true;
  private int print = 17;

  /** How to write one value. */
  interface Part<T> {
    /** Writes it. */
    void write(JsonWriter out, T value);
  }

  String text() {
    return out.toString();
  }

  private void key(String key) {
    if (!first) {
      out.append(',');
    }
    first = false;
    if (!key.isEmpty()) {
      quoted(key);
      out.append(':');
    }
  }

  JsonWriter open(String key) {
    key(key);
    out.append('{');
    first = true;
    return this;
  }

  JsonWriter close() {
    out.append('}');
    first = false;
    return this;
  }

  /** A number; absent ones are written as null. */
  JsonWriter number(String key, OptionalDouble value) {
    return value.isPresent() ? number(key, value.getAsDouble()) : nothing(key);
  }

  JsonWriter number(String key, double value) {
    key(key);
    long bits = Double.doubleToLongBits(value);
    print = print * 31 + (int) bits;
    print = print * 31 + (int) (bits >>> 32);
    digits(value);
    return this;
  }

  private JsonWriter nothing(String key) {
    key(key);
    out.append("null");
    return this;
  }

  JsonWriter flag(String key, boolean value) {
    key(key);
    out.append(value ? "true" : "false");
    return this;
  }

  JsonWriter text(String key, String value) {
    key(key);
    quoted(value);
    return this;
  }

  JsonWriter word(String key, Enum<?> value) {
    return text(key, value.name());
  }

  /** ISO 8601 local time to the second. */
  JsonWriter moment(String key, LocalDateTime value) {
    key(key);
    out.append('"').append(value.getYear());
    two('-', value.getMonthValue());
    two('-', value.getDayOfMonth());
    two('T', value.getHour());
    two(':', value.getMinute());
    two(':', value.getSecond());
    out.append('"');
    return this;
  }

  private void two(char before, int value) {
    out.append(before);
    if (value < 10) {
      out.append('0');
    }
    out.append(value);
  }

  <T> JsonWriter list(String key, List<T> values, Part<T> part) {
    key(key);
    out.append('[');
    first = true;
    for (T value : values) {
      part.write(this, value);
    }
    out.append(']');
    first = false;
    return this;
  }

  <T> JsonWriter group(String key, T value, Part<T> part) {
    open(key);
    part.write(this, value);
    return close();
  }

  <T> JsonWriter optional(String key, Optional<T> value, Part<T> part) {
    return value.isPresent() ? group(key, value.get(), part) : nothing(key);
  }

  /** Eight hexadecimal digits over the bits of all numbers so far. */
  JsonWriter fingerprint() {
    key("fingerprint");
    out.append('"');
    for (int shift = 28; shift >= 0; shift -= 4) {
      out.append("0123456789abcdef".charAt((print >>> shift) & 15));
    }
    out.append('"');
    return this;
  }

  private void quoted(String value) {
    out.append('"');
    for (int i = 0; i < value.length(); i++) {
      char c = value.charAt(i);
      if (c == '"' || c == '\\') {
        out.append('\\').append(c);
      } else if (c < ' ') {
        out.append("\\u00").append(c < 16 ? '0' : '1').append("0123456789abcdef".charAt(c & 15));
      } else {
        out.append(c);
      }
    }
    out.append('"');
  }

  private void digits(double value) {
    if (value == 0 || !Double.isFinite(value)) {
      out.append(value == 0 ? "0" : "null");
      return;
    }
    if (value < 0) {
      out.append('-');
    }
    double scaled = Math.abs(value);
    int power = 0;
    while (scaled >= LEAST_OF_TWELVE_DIGITS * 10) {
      scaled = scaled / 10;
      power++;
    }
    while (scaled < LEAST_OF_TWELVE_DIGITS) {
      scaled = scaled * 10;
      power--;
    }
    long whole = Numeric.toLong(Math.floor(scaled + 0.5));
    while (whole % 10 == 0) {
      whole = whole / 10;
      power++;
    }
    place(Long.toString(whole), power);
  }

  private void place(String digits, int power) {
    int point = digits.length() + power;
    if (point > 15 || point < -5) {
      out.append(digits).append('e').append(power);
    } else if (power >= 0) {
      out.append(digits);
      zeros(power);
    } else if (point > 0) {
      out.append(digits, 0, point).append('.').append(digits, point, digits.length());
    } else {
      out.append("0.");
      zeros(-point);
      out.append(digits);
    }
  }

  private void zeros(int count) {
    for (int i = 0; i < Math.min(count, DIGITS + 3); i++) {
      out.append('0');
    }
  }
}
