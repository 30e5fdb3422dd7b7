package benchlore.schedules.present;

import benchlore.schedules.quantity.Numeric;

/**
 * Numbers as people read them.
 *
 * <p>Rounded half up at the place shown, a half being forgiven 1e-9 of that place: 1.005, which no
 * binary fraction is, reads 1.01. Thousands stand apart by a narrow space from 10,000 on.
 */
final class NumberText {
  private static final double FORGIVEN = 1e-9;
  private static final double MOST_DIGITS = 1e15;
  private static final String GAP = "\u00a0";
  private static final int FIGURES = 3;
  private static final int FINEST = 64;
  private static final int MOST_PLACES = 300;

  private NumberText() {}

  /** Three figures, more for whole numbers, no trailing zeros, no exponent. */
  static String of(double value) {
    if (!Double.isFinite(value)) {
      return "–";
    }
    double size = Math.abs(value);
    String text = size >= 100 ? whole(size) : plain(size, FIGURES);
    return (value < 0 && !text.equals("0") ? "\u2212" : "") + text;
  }

  /** A tenth below ten, whole from there: nobody waits to the second. */
  static String duration(double value) {
    double grain = Math.abs(value) < 9.95 ? 10 : 1;
    return of(Math.floor(value * grain + 0.5) / grain);
  }

  /** Whole from five on, halves below: days, minutes and seconds as a sentence tells them. */
  static double halves(double value) {
    double grain = Math.abs(value) < 5 ? 2 : 1;
    return Math.floor(value * grain + 0.5) / grain;
  }

  /** Hours to the quarter: {@code 5 h 45 min}. */
  static String quarters(double hours) {
    double quarters = Math.floor(Math.abs(hours) * 4 + 0.5);
    double whole = Math.floor(quarters / 4);
    double minutes = 15 * (quarters - 4 * whole);
    String rest = minutes > 0 ? GAP + of(minutes) + GAP + NamedUnit.MINUTE.symbol() : "";
    String sign = hours < 0 && quarters > 0 ? "\u2212" : "";
    return sign + of(whole) + GAP + NamedUnit.HOUR.symbol() + rest;
  }

  /** Whether a number has no more than three figures, in the engine's unit or in the one shown. */
  static boolean isShort(double engine, double shown) {
    return isShort(engine) || isShort(shown);
  }

  private static boolean isShort(double value) {
    return Math.abs(value - trimmed(value, FIGURES)) <= FORGIVEN * Math.abs(value);
  }

  /** Inches as a rule has them: {@code 1 3/16}, to a 64th, from 4 to a 32nd, from 24 to a 16th. */
  static String fraction(double value) {
    double size = Math.abs(value);
    int parts = FINEST;
    if (size >= 4) {
      parts = size >= 24 ? 16 : 32;
    }
    long all = Numeric.toLong(Math.floor(size * parts + 0.5));
    long whole = all / parts;
    long top = all % parts;
    while (top > 0 && top % 2 == 0) {
      top /= 2;
      parts /= 2;
    }
    String text = Long.toString(whole);
    if (top > 0) {
      text = (whole > 0 ? whole + " " : "") + top + "/" + parts;
    }
    return (value < 0 && all > 0 ? "\u2212" : "") + text;
  }

  /**
   * A number cut to so many figures.
   *
   * @param digits all figures as a whole number
   * @param places how many of them stand behind the point
   * @param power 10 to the {@code places}
   */
  private record Cut(double digits, int places, double power) {
    static Cut of(double size, int figures) {
      double least = leastOf(figures);
      int places = 0;
      double power = 1;
      while (size > 0 && size * power < least && places < MOST_PLACES) {
        power = power * 10;
        places++;
      }
      double drop = 1;
      while (size / drop >= least * 10) {
        drop = drop * 10;
      }
      double kept = Math.floor(size * power / drop + 0.5 + FORGIVEN) * drop;
      return new Cut(kept, places, power);
    }
  }

  /**
   * So many figures without grouping, trailing zeros or an exponent, for a field of a form.
   *
   * @param value below 1e15 in size
   * @param figures 1 to 15
   */
  static String plain(double value, int figures) {
    Cut cut = Cut.of(Math.abs(value), figures);
    String text = decimal(Long.toString(Numeric.toLong(cut.digits())), cut.places());
    return (value < 0 && cut.digits() > 0 ? "-" : "") + text;
  }

  /** A number without what stands behind so many figures: the dust of binary fractions. */
  static double trimmed(double value, int figures) {
    Cut cut = Cut.of(Math.abs(value), figures);
    double size = cut.digits() / cut.power();
    return value < 0 ? -size : size;
  }

  /** The least whole number of so many figures. */
  private static double leastOf(int figures) {
    double least = 1;
    for (int i = 1; i < figures; i++) {
      least = least * 10;
    }
    return least;
  }

  /** Whole digits as a decimal of so many places, without trailing zeros. */
  private static String decimal(String digits, int places) {
    StringBuilder text = new StringBuilder(digits);
    while (text.length() <= places) {
      text.insert(0, '0');
    }
    if (places == 0) {
      return text.toString();
    }
    text.insert(text.length() - places, '.');
    int end = text.length();
    while (text.charAt(end - 1) == '0') {
      end--;
    }
    return text.substring(0, text.charAt(end - 1) == '.' ? end - 1 : end);
  }

  private static String whole(double size) {
    double left = size;
    StringBuilder zeros = new StringBuilder();
    while (left >= MOST_DIGITS) {
      left = left / 10;
      zeros.append('0');
    }
    return grouped(Long.toString(Numeric.toLong(Math.floor(left + 0.5 + FORGIVEN))) + zeros);
  }

  private static String grouped(String digits) {
    StringBuilder text = new StringBuilder(digits);
    for (int i = digits.length() - FIGURES; i > 0 && digits.length() > 4; i -= FIGURES) {
      text.insert(i, '\u202f');
    }
    return text.toString();
  }
}
