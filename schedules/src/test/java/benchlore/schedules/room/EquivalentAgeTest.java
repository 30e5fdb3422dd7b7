package benchlore.schedules.room;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.schedules.time.Moment;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.math3.analysis.integration.SimpsonIntegrator;
import org.junit.jupiter.api.Test;

/** The integral against closed forms and against a general numeric library. */
class EquivalentAgeTest {
  private static final Moment FIVE = Moment.of(2026, 3, 1, 5, 0);
  private static final EquivalentAge.Rate DOUBLING = EquivalentAge.q10(2, 20);

  /** On a straight line T = a + b t the age is (exp(k T2) - exp(k T1)) / (k b). */
  @Test
  void straightLineHasAClosedForm() {
    Climate day = Climate.swing(5, 25, 40);
    double k = Math.log(2) / 10;
    double perSecond = 20.0 / 36_000;
    double closed = (Math.exp(k * 5) - Math.exp(k * -15)) / (k * perSecond);
    double found = EquivalentAge.ageSeconds(day, FIVE, 36_000, DOUBLING);
    assertEquals(closed, found, 1e-4 * closed);
  }

  @Test
  void coolingHasTheSameClosedForm() {
    Climate day = Climate.swing(5, 25, 40);
    double k = Math.log(2) / 10;
    double closed = (Math.exp(k * 5) - Math.exp(k * -15)) / (k * 20.0 / 50_400);
    double found = EquivalentAge.ageSeconds(day, FIVE.plusHours(10), 50_400, DOUBLING);
    assertEquals(closed, found, 1e-4 * closed);
  }

  @Property(tries = 200)
  void agreesWithSimpson(
      @ForAll @DoubleRange(min = 0, max = 15) double low,
      @ForAll @DoubleRange(min = 0, max = 20) double rise,
      @ForAll @DoubleRange(min = 1.5, max = 3) double q10,
      @ForAll @IntRange(min = 0, max = 23) int hour) {
    Climate day = Climate.swing(low, low + rise, 50);
    EquivalentAge.Rate rate = EquivalentAge.q10(q10, 20);
    Moment start = Moment.of(2026, 1, 1, hour, 0);
    double sum = 0;
    for (int h = 0; h < 24; h++) {
      Climate.Reading from = day.at(start.plusHours(h));
      Climate.Reading to = day.at(start.plusHours(h + 1));
      sum += new SimpsonIntegrator().integrate(10_000, s -> rate.in(between(from, to, s)), 0, 3600);
    }
    double found = EquivalentAge.ageSeconds(day, start, 86_400, rate);
    assertEquals(sum, found, 1e-4 * sum);
  }

  @Property(tries = 200)
  void untilAndAgeUndoEachOther(
      @ForAll @DoubleRange(min = 0, max = 2e6) double needed,
      @ForAll @DoubleRange(min = -5, max = 20) double low,
      @ForAll @DoubleRange(min = 0, max = 20) double rise) {
    Climate day = Climate.swing(low, low + rise, 50);
    double elapsed = EquivalentAge.secondsUntil(day, FIVE, needed, DOUBLING).orElseThrow();
    double age = EquivalentAge.ageSeconds(day, FIVE, elapsed, DOUBLING);
    assertEquals(needed, age, 1e-6 * needed + 1e-6);
  }

  @Property(tries = 200)
  void warmerIsNeverSlower(
      @ForAll @DoubleRange(min = 0, max = 30) double celsius,
      @ForAll @DoubleRange(min = 0, max = 15) double more,
      @ForAll @DoubleRange(min = 0, max = 1e6) double needed) {
    double cool = until(Climate.steady(celsius, 50), needed);
    double warm = until(Climate.steady(celsius + more, 50), needed);
    assertTrue(warm <= cool + 1e-6);
  }

  @Test
  void aProcessThatStopsIsNeverDone() {
    Climate day = Climate.steady(5, 50);
    assertEquals(OptionalDouble.empty(), EquivalentAge.secondsUntil(day, FIVE, 1, air -> 0));
    assertEquals(0, EquivalentAge.secondsUntil(day, FIVE, 0, air -> 0).orElseThrow());
    assertEquals(
        OptionalDouble.empty(), EquivalentAge.secondsUntil(day, FIVE, 86_400 * 500.0, air -> 1));
  }

  @Test
  void aProcessThatRestsAtNightGoesOnInTheMorning() {
    Climate day = Climate.steady(5, 50).withHeating(8, 16, 20);
    EquivalentAge.Rate heated = air -> air.celsius() >= 19.999 ? 1 : 0;
    Moment start = Moment.of(2026, 1, 1, 8, 0);
    double until = EquivalentAge.secondsUntil(day, start, 8 * 3600, heated).orElseThrow();
    // Heated readings stand at 8 to 15, so the first day gives 7 whole hours.
    assertEquals(24 * 3600 + 3600, until, 1e-6);
  }

  private static Climate.Reading between(Climate.Reading from, Climate.Reading to, double second) {
    double celsius = from.celsius() + second / 3600 * (to.celsius() - from.celsius());
    return new Climate.Reading(celsius, 50);
  }

  private static double until(Climate day, double needed) {
    return EquivalentAge.secondsUntil(day, FIVE, needed, DOUBLING).orElseThrow();
  }
}
