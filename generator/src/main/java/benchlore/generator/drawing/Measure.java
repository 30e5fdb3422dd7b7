package benchlore.generator.drawing;

/**
 * A figure on a drawing: how it reads, and the SI value a script needs to show it in other units.
 *
 * @param text as shown without a script
 * @param value plain decimal, in {@code unit}; empty for words
 * @param unit {@code metre} or {@code degree}; empty for words
 */
record Measure(String text, String value, String unit) {
  static Measure mm(double mm) {
    return new Measure(Num.of(mm) + " mm", Num.metres(mm), "metre");
  }

  static Measure degrees(double degrees) {
    return new Measure(Num.of(degrees) + "°", Num.of(degrees), "degree");
  }

  /** Words where the bit does not decide the size. */
  static Measure words(String text) {
    return new Measure(text, "", "");
  }

  boolean isFigure() {
    return !unit.isEmpty();
  }
}
