package benchlore.generator.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers as text: exact, short, and in a browser's form. */
final class ShortestDecimalTest {
  @ParameterizedTest
  @CsvSource({
    "0, 0",
    "-0.0, 0",
    "5, 5",
    "-1.5, -1.5",
    "0.1, 0.1",
    "0.000001, 0.000001",
    "1.0E-7, 1e-7",
    "1.5E-7, 1.5e-7",
    "1.0E21, 1e+21",
    "1.0E20, 100000000000000000000",
    "2.0E23, 2e+23",
    "2.2250738585072014E-308, 2.2250738585072014e-308",
    "4.9E-324, 5e-324",
    "1.7976931348623157E308, 1.7976931348623157e+308",
    "9007199254740993, 9007199254740992",
    "2.0E-3, 0.002",
    "123456789012345680, 123456789012345680",
    "5.684341886080802E-14, 5.684341886080802e-14"
  })
  void isWrittenAsABrowserWritesIt(double value, String text) {
    assertEquals(text, ShortestDecimal.text(value));
  }

  @Test
  void whatIsNoNumberIsNull() {
    assertEquals("null", ShortestDecimal.text(Double.NaN));
    assertEquals("null", ShortestDecimal.text(Double.NEGATIVE_INFINITY));
  }

  @Property(tries = 20_000)
  void readsBackAndIsNoLongerThanTheJdks(@ForAll long bits) {
    double value = Double.longBitsToDouble(bits);
    if (Double.isFinite(value)) {
      String text = ShortestDecimal.text(value);
      assertEquals(value, Double.parseDouble(text), 0.0);
      assertTrue(digits(text) <= digits(Double.toString(value)), text);
    }
  }

  private static int digits(String text) {
    String mantissa = text.toLowerCase(java.util.Locale.ROOT).split("e", -1)[0];
    return mantissa.replaceAll("[-.]", "").replaceAll("^0+|0+$", "").length();
  }
}
