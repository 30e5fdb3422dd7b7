package benchlore.generator.drawing.svg;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Writes numbers: at most two decimals, a point, no grouping, whatever the locale. */
public final class Num {
  private Num() {}

  /** A number as drawings write it; words for what is none. */
  public static String of(double value) {
    if (!Double.isFinite(value)) {
      return "not a number";
    }
    return plain(BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP));
  }

  /** Millimetres, first rounded as they are shown, in metres. */
  public static double metres(double mm) {
    return BigDecimal.valueOf(mm).setScale(2, RoundingMode.HALF_UP).movePointLeft(3).doubleValue();
  }

  private static String plain(BigDecimal value) {
    return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
  }
}
