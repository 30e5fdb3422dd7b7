package benchlore.schedules.cutting;

import static benchlore.schedules.cutting.CutTables.INCH;
import static benchlore.schedules.cutting.CutTables.value;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.schedules.answer.Answer;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TabsTest {
  /** Forum thread on tabs, seen: a 6 in square cut with a 1/4 in bit has a path of 24.784 in. */
  @Test
  void pathRoundASixInchSquare() {
    Tabs tabs = value(Cutting.plan(new TabsRequest(6 * INCH, 6 * INCH, 0.018, 0.25 * INCH, false)));
    assertEquals(24.784, tabs.pathMetre() / INCH, 0.002);
    assertEquals(4, tabs.count());
    assertEquals(tabs.widthMetre() + 0.25 * INCH, tabs.programmedWidthMetre(), 1e-12);
  }

  /** General practice (from memory): 6 to 12 mm wide, 1.5 to 3 mm high, every 150 to 300 mm. */
  @ParameterizedTest
  @CsvSource({"0.2, 0.15, 0.018", "0.6, 0.4, 0.012", "1.2, 0.6, 0.018", "0.3, 0.3, 0.006"})
  void ordinaryPartsAreHeldAsPracticeHas(double length, double width, double thickness) {
    Tabs tabs = value(Cutting.plan(new TabsRequest(length, width, thickness, 0.006, true)));
    assertTrue(tabs.count() >= 4);
    assertTrue(tabs.widthMetre() >= 0.006 && tabs.widthMetre() <= 0.012);
    assertTrue(tabs.heightMetre() >= 0.0015 && tabs.heightMetre() <= 0.003);
    assertTrue(tabs.spacingMetre() >= 0.15 && tabs.spacingMetre() <= 0.3);
  }

  @Test
  void lastCutFreesThePartAndInsidesComeBefore() {
    Tabs plain = value(Cutting.plan(new TabsRequest(0.3, 0.2, 0.018, 0.006, false)));
    Tabs holed = value(Cutting.plan(new TabsRequest(0.3, 0.2, 0.018, 0.006, true)));
    assertEquals(plain.order().size() + 1, holed.order().size());
    assertEquals(plain.last(), holed.last());
    assertTrue(plain.last().pattern().contains("frees the part"));
  }

  @ParameterizedTest
  @CsvSource({
    "NaN, 0.2, 0.018, 0.006",
    "0.3, -1, 0.018, 0.006",
    "0.3, 0.2, 0, 0.006",
    "0.3, 0.2, 0.018, Infinity",
    "9, 0.2, 0.018, 0.006",
    "0.03, 0.02, 0.018, 0.006"
  })
  void refusesNonsenseAndPartsTooSmall(double length, double width, double thick, double bit) {
    assertInstanceOf(
        Answer.Refused.class, Cutting.plan(new TabsRequest(length, width, thick, bit, false)));
  }

  @Property(tries = 200)
  boolean thinSheetIsNeverLeftMoreThanHalfAndSpacingHolds(
      @ForAll @DoubleRange(min = 0.3, max = 3) double length,
      @ForAll @DoubleRange(min = 0.3, max = 3) double width,
      @ForAll @Scale(4) @DoubleRange(min = 0.001, max = 0.06) double thickness) {
    Answer<Tabs> answer = Cutting.plan(new TabsRequest(length, width, thickness, 0.003, false));
    Assume.that(answer instanceof Answer.Given);
    Tabs tabs = value(answer);
    return tabs.heightMetre() > 0
        && tabs.heightMetre() <= thickness / 2 + 1e-12
        && tabs.spacingMetre() <= 0.2 + 1e-9;
  }
}
