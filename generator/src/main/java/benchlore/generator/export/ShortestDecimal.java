package benchlore.generator.export;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * The shortest decimal that reads back as the same number, set down as every browser sets down a
 * number (ECMAScript, Number::toString).
 *
 * <p>{@code Double.toString} is no such form: before Java 19 it is now and then a digit longer than
 * needed, and its exponents are written otherwise. So the digits are sought here: of the decimals
 * of the least length that still read back as the number, the nearest.
 */
final class ShortestDecimal {
  private ShortestDecimal() {}

  /** A finite number as text; NaN and the infinities are null, as JSON has no word for them. */
  static String text(double value) {
    if (!Double.isFinite(value)) {
      return "null";
    }
    if (value == Math.rint(value) && Math.abs(value) < 1e15) {
      return Long.toString((long) value);
    }
    BigDecimal digits = shortest(Math.abs(value));
    String text = digits.unscaledValue().toString();
    return (value < 0 ? "-" : "") + placed(text, text.length() - digits.scale());
  }

  private static BigDecimal shortest(double value) {
    BigDecimal best = new BigDecimal(Double.toString(value)).stripTrailingZeros();
    BigDecimal exact = new BigDecimal(value);
    int digits = best.precision();
    BigDecimal found = nearest(exact, value, digits);
    while (found != null) {
      best = found.stripTrailingZeros();
      digits = Math.min(digits - 1, best.precision() - 1);
      found = digits > 0 ? nearest(exact, value, digits) : null;
    }
    return best;
  }

  /** The nearest decimal of so many digits that reads back as the number; null if none does. */
  private static BigDecimal nearest(BigDecimal exact, double value, int digits) {
    BigDecimal down = exact.round(new MathContext(digits, RoundingMode.DOWN));
    BigDecimal up = exact.round(new MathContext(digits, RoundingMode.UP));
    boolean upFirst = up.subtract(exact).compareTo(exact.subtract(down)) < 0;
    for (BigDecimal decimal : upFirst ? new BigDecimal[] {up, down} : new BigDecimal[] {down, up}) {
      if (decimal.doubleValue() == value) {
        return decimal;
      }
    }
    return null;
  }

  /** Puts the point after so many digits. */
  private static String placed(String digits, int point) {
    int length = digits.length();
    if (point > 21 || point <= -6) {
      int power = point - 1;
      String head = length == 1 ? digits : digits.charAt(0) + "." + digits.substring(1);
      return head + (power < 0 ? "e-" : "e+") + Math.abs(power);
    }
    if (point >= length) {
      return digits + "0".repeat(point - length);
    }
    return point > 0
        ? digits.substring(0, point) + "." + digits.substring(point)
        : "0." + "0".repeat(-point) + digits;
  }
}
