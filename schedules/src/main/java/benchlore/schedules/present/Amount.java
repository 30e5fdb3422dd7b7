package benchlore.schedules.present;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * An amount as people write it: {@code 900 mm}, {@code 1 1/2 in}, {@code 40 F}.
 *
 * @param number the number in {@code unit}
 * @param unit what it was written in
 */
public record Amount(double number, NamedUnit unit) {
  /** More digits than a double holds would be rounded twice. */
  private static final int MOST_DIGITS = 15;

  /** An amount cut in two; either part may be empty. */
  record Parts(String number, String unit) {}

  /** Refuses an amount without a unit. */
  public Amount {
    if (unit == null) {
      throw new NullPointerException("unit");
    }
  }

  /** Reads an amount; empty if it is no number with a unit of the table behind it. */
  public static Optional<Amount> find(String text) {
    Parts parts = split(text);
    OptionalDouble number = number(parts.number());
    return number.isEmpty()
        ? Optional.empty()
        : NamedUnit.find(parts.unit()).map(unit -> new Amount(number.getAsDouble(), unit));
  }

  /** The amount in the engine's unit. */
  public double value() {
    return unit.toEngine(number);
  }

  /** Cuts behind the last digit of the number, or the point behind that. */
  static Parts split(String text) {
    int end = 0;
    int last = 0;
    while (end < text.length() && "+-\u2212.,/ 0123456789".indexOf(text.charAt(end)) >= 0) {
      end++;
      if (" ".indexOf(text.charAt(end - 1)) < 0) {
        last = end;
      }
    }
    return new Parts(text.substring(0, last), text.substring(end).trim());
  }

  /**
   * A number alone: {@code 18}, {@code -3.5}, {@code 18,5}, {@code 3/4}, {@code 1 1/2}, {@code
   * 1-1/2}; empty for anything else.
   */
  public static OptionalDouble number(String text) {
    boolean below = text.startsWith("-") || text.startsWith("\u2212");
    String size = below || text.startsWith("+") ? text.substring(1) : text;
    OptionalDouble value = size.indexOf('/') < 0 ? decimal(size) : fraction(size);
    return below && value.isPresent() ? OptionalDouble.of(-value.getAsDouble()) : value;
  }

  private static OptionalDouble fraction(String text) {
    int slash = text.indexOf('/');
    int begin = slash;
    while (begin > 0 && isDigit(text.charAt(begin - 1))) {
      begin--;
    }
    String before = text.substring(0, begin);
    OptionalDouble whole = before.isEmpty() ? OptionalDouble.of(0) : whole(before.stripTrailing());
    OptionalDouble top = digits(text.substring(begin, slash));
    OptionalDouble bottom = digits(text.substring(slash + 1));
    if (whole.isEmpty() || top.isEmpty() || bottom.isEmpty() || bottom.getAsDouble() == 0) {
      return OptionalDouble.empty();
    }
    double part = top.getAsDouble() / bottom.getAsDouble();
    return OptionalDouble.of(whole.getAsDouble() + part);
  }

  /** The whole inches before a fraction, with a space or a hyphen behind them. */
  private static OptionalDouble whole(String text) {
    return digits(text.endsWith("-") ? text.substring(0, text.length() - 1) : text);
  }

  private static OptionalDouble decimal(String text) {
    String plain = text.replace(',', '.');
    int point = plain.indexOf('.');
    if (point < 0) {
      return digits(plain);
    }
    String digits = plain.substring(0, point) + plain.substring(point + 1);
    OptionalDouble all = digits(digits);
    double power = 1;
    for (int i = point + 1; i < plain.length(); i++) {
      power = power * 10;
    }
    return all.isEmpty() ? all : OptionalDouble.of(all.getAsDouble() / power);
  }

  /** Digits alone; exact, and so is what is divided by a power of ten once. */
  private static OptionalDouble digits(String text) {
    if (text.isEmpty() || text.length() > MOST_DIGITS) {
      return OptionalDouble.empty();
    }
    double value = 0;
    for (int i = 0; i < text.length(); i++) {
      if (!isDigit(text.charAt(i))) {
        return OptionalDouble.empty();
      }
      value = value * 10 + (text.charAt(i) - '0');
    }
    return OptionalDouble.of(value);
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }
}
