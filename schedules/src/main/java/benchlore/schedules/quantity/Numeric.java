package benchlore.schedules.quantity;

/**
 * Arithmetic that gives the same bits on the JVM and, compiled to JavaScript, in a browser.
 *
 * <p>The platforms' own exp, log, pow, sin and cos differ in the last bit, and so do their rounding
 * and casts of huge numbers. Everything here is built from {@code + - * /} and {@link
 * Math#sqrt(double)}, which are exact on both. The compiler to JavaScript also drops grouping that
 * matters, so engine code never has a sum as the right operand of {@code +} nor a product as the
 * right operand of {@code *}.
 */
public final class Numeric {
  /** The ratio of a circle's circumference to its diameter, as {@link Math#PI}. */
  public static final double PI = Math.PI;

  private static final double LN2 = 0.6931471805599453;
  // ln 2 in two parts: k * LN2_HIGH is exact for |k| < 2^20 since its low 21 bits are zero.
  private static final double LN2_HIGH = 0.6931471803691238;
  private static final double LN2_LOW = 1.9082149292705877e-10;
  private static final double SQRT2 = 1.4142135623730951;
  private static final int SERIES_TERMS = 20;

  private Numeric() {}

  /**
   * e to the x. Reduces x = k ln 2 + r with |r| at most ln 2 / 2 and sums the power series of r
   * from the smallest term.
   *
   * @param x any number; above 709 gives infinity, below -745 gives 0, NaN stays NaN
   * @return e^x, relative error under 1e-15
   */
  public static double exp(double x) {
    if (Double.isNaN(x)) {
      return x;
    }
    if (x > 709.7) {
      return Double.POSITIVE_INFINITY;
    }
    if (x < -745.0) {
      return 0;
    }
    double k = Math.floor(x / LN2 + 0.5);
    double reduced = x - k * LN2_HIGH;
    reduced = reduced - k * LN2_LOW;
    double sum = 1;
    for (int n = SERIES_TERMS; n >= 1; n--) {
      double next = sum * reduced / n;
      sum = 1 + next;
    }
    return scaleByPowerOfTwo(sum, (int) k);
  }

  /**
   * Natural logarithm. Scales x to m in [sqrt(1/2), sqrt 2] and sums the series of 2 artanh((m - 1)
   * / (m + 1)).
   *
   * @param x a positive number; 0 gives minus infinity, negative or NaN gives NaN
   * @return ln x, absolute error under 1e-15 near 1, relative elsewhere
   */
  public static double log(double x) {
    if (!(x > 0)) {
      return x == 0 ? Double.NEGATIVE_INFINITY : Double.NaN;
    }
    if (x == Double.POSITIVE_INFINITY) {
      return x;
    }
    int k = 0;
    double m = x;
    while (m > SQRT2) {
      m = m * 0.5;
      k++;
    }
    while (m < SQRT2 * 0.5) {
      m = m * 2;
      k--;
    }
    double s = (m - 1) / (m + 1);
    double square = s * s;
    double sum = 0;
    for (int n = 2 * SERIES_TERMS + 1; n >= 1; n -= 2) {
      double term = 1.0 / n;
      sum = square * sum + term;
    }
    double small = 2 * s * sum;
    double low = k * LN2_LOW + small;
    return low + k * LN2_HIGH;
  }

  /**
   * x to the power y, for positive x, as exp(y ln x).
   *
   * @param x zero or more; 0 gives 0 for positive y and 1 for y = 0
   * @param y any number
   * @return x^y; NaN for negative x
   */
  public static double pow(double x, double y) {
    if (y == 0) {
      return 1;
    }
    if (x == 0) {
      return y > 0 ? 0 : Double.POSITIVE_INFINITY;
    }
    return exp(y * log(x));
  }

  /**
   * Square root, exact on both platforms.
   *
   * @param x zero or more
   * @return the root; NaN for negative x
   */
  public static double sqrt(double x) {
    return Math.sqrt(x);
  }

  /**
   * Sine of an angle in degrees.
   *
   * @param degrees from -360 to 360
   * @return the sine, absolute error under 1e-15; NaN outside the range
   */
  public static double sinDegrees(double degrees) {
    if (!(degrees >= -360 && degrees <= 360)) {
      return Double.NaN;
    }
    double turn = degrees;
    if (turn > 180) {
      turn = turn - 360;
    }
    if (turn < -180) {
      turn = turn + 360;
    }
    if (turn > 90) {
      turn = 180 - turn;
    }
    if (turn < -90) {
      turn = -180 - turn;
    }
    double r = turn * PI / 180;
    double square = r * r;
    double sum = 1;
    for (int n = 2 * SERIES_TERMS; n >= 2; n -= 2) {
      double step = n * (n + 1.0);
      double term = square * sum / step;
      sum = 1 - term;
    }
    return r * sum;
  }

  /**
   * Cosine of an angle in degrees.
   *
   * @param degrees from -270 to 270
   * @return the cosine; NaN outside the range
   */
  public static double cosDegrees(double degrees) {
    return sinDegrees(degrees + 90);
  }

  /**
   * Rounds to the nearest whole number, halves upward.
   *
   * @param x from -2e9 to 2e9
   * @return the whole number
   * @throws IllegalArgumentException outside that range or for NaN
   */
  public static int round(double x) {
    return whole(Math.floor(x + 0.5));
  }

  /**
   * The smallest whole number that is not below x, forgiving a rounding error of 1e-9: 3.0000000001
   * boards are 3.
   *
   * @param x from -2e9 to 2e9
   * @return the whole number
   * @throws IllegalArgumentException outside that range or for NaN
   */
  public static int ceil(double x) {
    return whole(Math.ceil(x - 1e-9));
  }

  /**
   * The whole part as a long, cut off toward zero: whole seconds.
   *
   * @param x from -9e15 to 9e15
   * @return the whole number
   * @throws IllegalArgumentException outside that range or for NaN
   */
  public static long toLong(double x) {
    if (!(x >= -9e15 && x <= 9e15)) {
      throw new IllegalArgumentException("x must be between -9e15 and 9e15: " + text(x));
    }
    return (long) x;
  }

  /**
   * Decimal text with a fixed number of decimals, halves away from zero, no grouping.
   *
   * @param x between -1e9 and 1e9
   * @param decimals 0 to 6
   * @return such as {@code -0.30}
   * @throws IllegalArgumentException outside those ranges or for NaN
   */
  public static String fixed(double x, int decimals) {
    if (decimals < 0 || decimals > 6) {
      throw new IllegalArgumentException("decimals must be 0 to 6: " + decimals);
    }
    if (!(x >= -1e9 && x <= 1e9)) {
      throw new IllegalArgumentException("x must be between -1e9 and 1e9: " + text(x));
    }
    double power = 1;
    for (int i = 0; i < decimals; i++) {
      power = power * 10;
    }
    double magnitude = x < 0 ? -x : x;
    double scaled = Math.floor(magnitude * power + 0.5);
    double whole = Math.floor(scaled / power);
    long rest = (long) (scaled - whole * power);
    StringBuilder text = new StringBuilder();
    if (x < 0 && scaled > 0) {
      text.append('-');
    }
    text.append((long) whole);
    if (decimals > 0) {
      String digits = Long.toString(rest);
      text.append('.');
      for (int i = digits.length(); i < decimals; i++) {
        text.append('0');
      }
      text.append(digits);
    }
    return text.toString();
  }

  /**
   * Number text for a message about an argument: one to six decimals, or words for what is too
   * large for them or no number.
   *
   * @param x any number
   * @return such as {@code 0.5}
   */
  public static String text(double x) {
    if (Double.isNaN(x)) {
      return "not a number";
    }
    if (x > 1e9) {
      return "above 1e9";
    }
    if (x < -1e9) {
      return "below -1e9";
    }
    String digits = fixed(x, 6);
    int end = digits.length();
    while (digits.charAt(end - 1) == '0' && digits.charAt(end - 2) != '.') {
      end--;
    }
    return digits.substring(0, end);
  }

  private static int whole(double x) {
    if (!(x >= -2e9 && x <= 2e9)) {
      throw new IllegalArgumentException("x must be between -2e9 and 2e9: " + text(x));
    }
    return (int) x;
  }

  private static double scaleByPowerOfTwo(double x, int power) {
    double scaled = x;
    for (int i = 0; i < power; i++) {
      scaled = scaled * 2;
    }
    for (int i = 0; i > power; i--) {
      scaled = scaled * 0.5;
    }
    return scaled;
  }
}
