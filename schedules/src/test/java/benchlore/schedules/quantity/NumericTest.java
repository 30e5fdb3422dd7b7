package benchlore.schedules.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

/** Our own arithmetic against the platform's. */
class NumericTest {
  private static final double RELATIVE = 1e-15;

  @Property(tries = 1000)
  void exp(@ForAll @Scale(12) @DoubleRange(min = -700, max = 700) double x) {
    double expected = StrictMath.exp(x);
    assertEquals(expected, Numeric.exp(x), 2 * RELATIVE * expected);
  }

  @Property(tries = 1000)
  void log(@ForAll @Scale(12) @DoubleRange(min = 1e-12, max = 1e12) double x) {
    double expected = StrictMath.log(x);
    assertEquals(expected, Numeric.log(x), 2 * RELATIVE * Math.max(1, Math.abs(expected)));
  }

  @Property(tries = 1000)
  void logNearOne(@ForAll @Scale(12) @DoubleRange(min = 0.9, max = 1.1) double x) {
    assertEquals(StrictMath.log(x), Numeric.log(x), RELATIVE);
  }

  @Property(tries = 1000)
  void pow(
      @ForAll @Scale(12) @DoubleRange(min = 1e-3, max = 1e3) double x,
      @ForAll @Scale(12) @DoubleRange(min = -20, max = 20) double y) {
    double expected = StrictMath.pow(x, y);
    // y ln x up to 140: its rounding shows in the result in proportion.
    assertEquals(expected, Numeric.pow(x, y), 1e-13 * expected);
  }

  @Property(tries = 1000)
  void sine(@ForAll @Scale(12) @DoubleRange(min = -360, max = 360) double degrees) {
    assertEquals(StrictMath.sin(StrictMath.toRadians(degrees)), Numeric.sinDegrees(degrees), 2e-15);
  }

  @Property(tries = 1000)
  void cosine(@ForAll @Scale(12) @DoubleRange(min = -270, max = 270) double degrees) {
    assertEquals(StrictMath.cos(StrictMath.toRadians(degrees)), Numeric.cosDegrees(degrees), 2e-15);
  }

  @Property(tries = 1000)
  void root(@ForAll @Scale(12) @DoubleRange(min = 0, max = 1e12) double x) {
    assertEquals(StrictMath.sqrt(x), Numeric.sqrt(x));
  }

  @Property(tries = 1000)
  void expUndoesLog(@ForAll @Scale(12) @DoubleRange(min = 1e-6, max = 1e6) double x) {
    assertEquals(x, Numeric.exp(Numeric.log(x)), 1e-14 * x);
  }

  @Test
  void exactAngles() {
    assertEquals(0, Numeric.sinDegrees(0));
    assertEquals(1, Numeric.sinDegrees(90), 1e-15);
    assertEquals(0.5, Numeric.sinDegrees(30), 1e-15);
    assertEquals(-1, Numeric.cosDegrees(180), 1e-15);
    assertEquals(Math.sqrt(0.5), Numeric.cosDegrees(45), 1e-15);
  }

  @Test
  void edges() {
    assertEquals(Double.POSITIVE_INFINITY, Numeric.exp(800));
    assertEquals(0, Numeric.exp(-800));
    assertEquals(1, Numeric.exp(0));
    assertTrue(Double.isNaN(Numeric.exp(Double.NaN)));
    assertEquals(Double.NEGATIVE_INFINITY, Numeric.log(0));
    assertEquals(Double.POSITIVE_INFINITY, Numeric.log(Double.POSITIVE_INFINITY));
    assertTrue(Double.isNaN(Numeric.log(-1)));
    assertTrue(Double.isNaN(Numeric.log(Double.NaN)));
    assertEquals(0, Numeric.log(1));
    assertEquals(1, Numeric.pow(0, 0));
    assertEquals(0, Numeric.pow(0, 2));
    assertEquals(Double.POSITIVE_INFINITY, Numeric.pow(0, -1));
    assertTrue(Double.isNaN(Numeric.pow(-1, 2)));
    assertTrue(Double.isNaN(Numeric.sinDegrees(361)));
    assertTrue(Double.isNaN(Numeric.sqrt(-1)));
  }

  @Property(tries = 1000)
  void roundAgainstBigDecimal(@ForAll @Scale(12) @DoubleRange(min = -2e6, max = 2e6) double x) {
    int expected = BigDecimal.valueOf(x + 0.5).setScale(0, RoundingMode.FLOOR).intValueExact();
    assertEquals(expected, Numeric.round(x));
  }

  @Test
  void roundHalvesUpward() {
    assertEquals(3, Numeric.round(2.5));
    assertEquals(-2, Numeric.round(-2.5));
    assertThrows(IllegalArgumentException.class, () -> Numeric.round(Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> Numeric.round(3e9));
  }

  @Test
  void ceilForgivesRounding() {
    assertEquals(3, Numeric.ceil(3.0000000001));
    assertEquals(4, Numeric.ceil(3.001));
    assertEquals(-3, Numeric.ceil(-3.5));
    assertThrows(IllegalArgumentException.class, () -> Numeric.ceil(Double.POSITIVE_INFINITY));
  }

  /** The same text as BigDecimal's, but where the number is within rounding of a tie. */
  @Property(tries = 1000)
  void fixedAgainstBigDecimal(
      @ForAll @Scale(12) @DoubleRange(min = -1e6, max = 1e6) double x,
      @ForAll @IntRange(min = 0, max = 6) int decimals) {
    BigDecimal exact = new BigDecimal(x);
    BigDecimal rounded = exact.setScale(decimals, RoundingMode.HALF_UP);
    BigDecimal half = BigDecimal.ONE.movePointLeft(decimals).multiply(new BigDecimal("0.5"));
    double fromTie = exact.subtract(rounded).abs().subtract(half).abs().doubleValue();
    String text = Numeric.fixed(x, decimals);
    if (fromTie > 1e-9) {
      assertEquals(rounded.toPlainString(), text);
    }
    double error = new BigDecimal(text).subtract(exact).abs().subtract(half).doubleValue();
    assertTrue(error <= 1e-9);
  }

  @Test
  void fixedText() {
    assertEquals("-0.30", Numeric.fixed(-0.3, 2));
    assertEquals("0.00", Numeric.fixed(-0.001, 2));
    assertEquals("1000000000.000000", Numeric.fixed(1e9, 6));
    assertEquals("3", Numeric.fixed(2.5, 0));
    assertEquals("-3", Numeric.fixed(-2.5, 0));
    assertEquals("0.050", Numeric.fixed(0.05, 3));
    assertEquals("10.00", Numeric.fixed(9.999, 2));
    assertThrows(IllegalArgumentException.class, () -> Numeric.fixed(Double.NaN, 2));
    assertThrows(IllegalArgumentException.class, () -> Numeric.fixed(2e9, 2));
    assertThrows(IllegalArgumentException.class, () -> Numeric.fixed(1, 7));
  }
}
