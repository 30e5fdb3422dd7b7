package benchlore.schedules.quantity.guard;

/** What engine code may not do, one rule a row. */
enum Rule {
  /** The compiler to JavaScript drops the brackets of {@code a + (b + c)}. */
  SUM_RIGHT_OF_PLUS("a sum or difference as the right operand of +"),
  /** The same for {@code a * (b * c)}. */
  PRODUCT_RIGHT_OF_TIMES("a product or quotient as the right operand of *"),
  /** The platforms' transcendental functions and roundings differ in the last bit. */
  PLATFORM_MATH("a Math function that differs between platforms; use Numeric"),
  /** Casts of huge numbers and NaN differ. */
  UNCHECKED_CAST("a cast of a double to a whole number; use Numeric"),
  /** The platforms write doubles differently, and a table for it weighs 28 KB. */
  NUMBER_TEXT("text made of a double; use Numeric.fixed or text"),
  /** Heavy in JavaScript, and dependent on the locale. */
  FORMATTING("String.format, formatted, a regular expression or a case change by locale"),
  /** The JDK corrects such a sum for rounding, the compiler to JavaScript does not. */
  STREAM("a stream of doubles, whose sum differs; write a loop"),
  /** Weighs much, counts slowly in JavaScript, and knows zones and the clock. */
  JDK_TIME("java.time; use schedules.time"),
  /** The engine is a function of its arguments. */
  OUTSIDE_WORLD("the system, threads, files, randomness, reflection");

  private final String words;

  Rule(String words) {
    this.words = words;
  }

  String words() {
    return words;
  }
}
