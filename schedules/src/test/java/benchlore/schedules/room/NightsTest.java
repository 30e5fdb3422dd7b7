package benchlore.schedules.room;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.schedules.room.DailySwing.Heater;
import benchlore.schedules.room.DailySwing.Night;
import benchlore.schedules.time.Date;
import benchlore.schedules.time.Moment;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Nights that were colder or warmer than usual. */
class NightsTest {
  private static final Date DATE = Date.of(2027, 2, 28);
  private static final Moment NOON = DATE.at(12, 0);
  private static final DailySwing USUAL = new DailySwing(10, 20, 50, Optional.empty());
  private static final EquivalentAge.Rate DOUBLING = EquivalentAge.q10(2, 20);

  @Test
  void aNightBendsItsOwnLinesAndNoOthers() {
    Climate usual = USUAL.climate(List.of());
    Climate cold = USUAL.climate(List.of(night(DATE, 0, 20)));
    assertEquals(20, cold.at(DATE.at(15, 0)).celsius(), 1e-12);
    assertEquals(10, cold.at(DATE.at(22, 0)).celsius(), 1e-12);
    assertEquals(0, cold.at(DATE.plusDays(1).at(5, 0)).celsius(), 1e-12);
    assertEquals(10, cold.at(DATE.plusDays(1).at(10, 0)).celsius(), 1e-12);
    assertEquals(20, cold.at(DATE.plusDays(1).at(15, 0)).celsius(), 1e-12);
    for (int minute = -3 * 1440; minute < 4 * 1440; minute += 10) {
      Moment at = DATE.midnight().plusMinutes(minute);
      boolean before = !at.isAfter(DATE.at(15, 0));
      if (before || !at.isBefore(DATE.plusDays(1).at(15, 0))) {
        assertEquals(usual.at(at), cold.at(at), at.toString());
      }
    }
  }

  @Test
  void theHighBelongsToTheAfternoonBefore() {
    Climate warm = USUAL.climate(List.of(night(DATE, 10, 30)));
    assertEquals(20, warm.at(DATE.at(10, 0)).celsius(), 1e-12);
    assertEquals(30, warm.at(DATE.at(15, 0)).celsius(), 1e-12);
    assertEquals(20, warm.at(DATE.plusDays(1).at(15, 0)).celsius(), 1e-12);
  }

  @Test
  void nightsThatFollowEachOtherShareTheMorningBetween() {
    Climate cold = USUAL.climate(List.of(night(DATE, 0, 20), night(DATE.plusDays(1), -6, 12)));
    assertEquals(6, cold.at(DATE.plusDays(1).at(10, 0)).celsius(), 1e-12);
    assertEquals(12, cold.at(DATE.plusDays(1).at(15, 0)).celsius(), 1e-12);
    assertEquals(-6, cold.at(DATE.plusDays(2).at(5, 0)).celsius(), 1e-12);
    assertEquals(3, cold.otherwise().size());
  }

  /** In ten minutes no air moves by more than its steepest line, also over midnight. */
  @Property(tries = 200)
  void theAirHasNoJumps(
      @ForAll @DoubleRange(min = -15, max = 20) double low,
      @ForAll @DoubleRange(min = 0, max = 20) double rise,
      @ForAll @IntRange(min = 1, max = 3) int apart) {
    Climate air =
        USUAL.climate(List.of(night(DATE, low, low + rise), night(DATE.plusDays(apart), 4, 9)));
    for (int second = -86_400; second < 6 * 86_400; second += 600) {
      double one = air.at(NOON, second).celsius();
      double two = air.at(NOON, second + 600).celsius();
      assertTrue(Math.abs(two - one) <= 40.0 / 60 + 1e-9, second + " s: " + one + ", " + two);
    }
  }

  /** Counted from any moment, the air of one moment is the same. */
  @Property(tries = 200)
  void aMomentHasOneAir(
      @ForAll @IntRange(min = -300_000, max = 300_000) int second,
      @ForAll @IntRange(min = -300_000, max = 300_000) int from) {
    Climate air = USUAL.climate(List.of(night(DATE, -3, 14)));
    assertEquals(air.at(NOON.plusSeconds(second)), air.at(NOON.plusSeconds(from), second - from));
  }

  @Test
  void theWaterInTheAirStaysUnlessItsHumidityIsTold() {
    Climate usual = USUAL.climate(List.of());
    Climate same = USUAL.climate(List.of(night(DATE, 10, 16)));
    Moment evening = DATE.at(18, 0);
    assertEquals(usual.at(evening).dewPointCelsius(), same.at(evening).dewPointCelsius(), 1e-9);
    Climate dry = USUAL.climate(List.of(new Night(DATE, 10, 20, OptionalDouble.of(20), true)));
    assertEquals(20, dry.at(DATE.at(15, 0)).relativeHumidityPercent(), 1e-9);
    assertEquals(50, dry.at(DATE.plusDays(1).at(15, 0)).relativeHumidityPercent(), 1e-9);
  }

  @Test
  void aHeaterWarmsTheNightUnlessItStoodStill() {
    DailySwing heated = new DailySwing(10, 20, 50, Optional.of(new Heater(20, 8, 18)));
    Moment five = DATE.plusDays(1).at(5, 0);
    Climate on = heated.climate(List.of(night(DATE, 0, 20)));
    assertEquals(18, on.at(five).celsius(), 1e-12);
    Climate off = heated.climate(List.of(new Night(DATE, 0, 20, OptionalDouble.empty(), false)));
    assertEquals(0, off.at(five).celsius(), 1e-12);
    assertEquals(18, off.at(five.plusDays(1)).celsius(), 1e-12);
    assertEquals(18, off.at(five.plusDays(-1)).celsius(), 1e-12);
  }

  @Property(tries = 200)
  void theUsualNightIsNoNightAtAll(
      @ForAll @DoubleRange(min = -10, max = 25) double low,
      @ForAll @DoubleRange(min = 0, max = 20) double rise,
      @ForAll @DoubleRange(min = 10, max = 95) double humidity,
      @ForAll @IntRange(min = 0, max = 23) int hour) {
    Heater heater = new Heater(hour, 24 - hour, 18);
    DailySwing room = new DailySwing(low, low + rise, humidity, Optional.of(heater));
    Climate usual = room.climate(List.of());
    assertEquals(usual, Climate.swing(low, low + rise, humidity).withHeating(hour, 24 - hour, 18));
    assertEquals(usual, room.climate(List.of(night(DATE, low, low + rise))));
    OptionalDouble told = OptionalDouble.of(humidity);
    Night said = new Night(DATE, low, low + rise, told, true);
    assertEquals(usual, room.climate(List.of(said)));
  }

  /** A night a hair colder than usual, reckoned as another night, moves nothing but by a hair. */
  @Property(tries = 200)
  void almostTheUsualNightGivesAlmostTheUsualAnswer(
      @ForAll @DoubleRange(min = 1, max = 2e6) double needed,
      @ForAll @IntRange(min = -48, max = 48) int hours) {
    Climate almost =
        USUAL.climate(List.of(night(DATE, 10 - 1e-9, 20), night(DATE.plusDays(9), 10 + 1e-9, 20)));
    assertEquals(4, almost.otherwise().size());
    Moment start = NOON.plusHours(hours);
    double usual = until(USUAL.climate(List.of()), start, needed);
    assertEquals(usual, until(almost, start, needed), 1e-2);
  }

  @Property(tries = 300)
  void aColderNightMakesNothingReadyEarlier(
      @ForAll @DoubleRange(min = 0, max = 25) double colder,
      @ForAll @DoubleRange(min = 0, max = 3e5) double needed,
      @ForAll @IntRange(min = -60, max = 60) int hours) {
    Climate cold = USUAL.climate(List.of(night(DATE, 10 - colder, 20)));
    Moment start = NOON.plusHours(hours);
    double usual = until(USUAL.climate(List.of()), start, needed);
    assertTrue(until(cold, start, needed) >= usual - 1e-6);
  }

  @Property(tries = 300)
  void aNightAfterItIsReadyChangesNothing(
      @ForAll @DoubleRange(min = 0, max = 4e5) double needed,
      @ForAll @IntRange(min = 0, max = 86_399) int second,
      @ForAll @DoubleRange(min = -20, max = 20) double low) {
    Climate usual = USUAL.climate(List.of());
    Moment start = DATE.midnight().plusSeconds(second);
    double ready = until(usual, start, needed);
    // The sum goes by whole steps: the one it is ready in has to end before the night begins.
    Moment at = start.plusSeconds(Math.ceil(ready) + EquivalentAge.STEP_SECONDS);
    Date evening = at.hour() < 15 ? at.date() : at.date().plusDays(1);
    Climate later = USUAL.climate(List.of(night(evening, low, 20)));
    assertEquals(ready, until(later, start, needed));
  }

  /** The sum hour by hour, from a table of the air written here, against the engine. */
  @Test
  void anHourlySumOfOneColdNightAgrees() {
    // Noon of the 28th to noon of the 2nd: 20 at three, 4 at five, 20 at three, 10 at five.
    double[][] points = {{0, 17}, {3, 20}, {17, 4}, {27, 20}, {41, 10}, {48, 17}};
    double age = 0;
    double[] atHour = new double[49];
    for (int hour = 0; hour < 48; hour++) {
      atHour[hour] = age;
      for (int tenth = 0; tenth < 60; tenth++) {
        double celsius = line(points, hour + (tenth + 0.5) / 60);
        age += Math.pow(2, (celsius - 20) / 10) * 60;
      }
    }
    atHour[48] = age;
    Climate cold = USUAL.climate(List.of(night(DATE, 4, 20)));
    for (int hour = 1; hour <= 48; hour++) {
      double found = EquivalentAge.ageSeconds(cold, NOON, hour * 3600.0, DOUBLING);
      assertEquals(atHour[hour], found, 1e-4 * atHour[hour], "after " + hour + " h");
      double until = until(cold, NOON, atHour[hour]);
      assertEquals(hour * 3600.0, until, 15, hour + " h");
    }
    assertNotEquals(
        age, EquivalentAge.ageSeconds(USUAL.climate(List.of()), NOON, 48 * 3600.0, DOUBLING), 3600);
  }

  @Property(tries = 200)
  void untilAndAgeUndoEachOther(
      @ForAll @DoubleRange(min = 1, max = 1e6) double needed,
      @ForAll @DoubleRange(min = -10, max = 20) double low,
      @ForAll @IntRange(min = -30, max = 30) int hours) {
    Climate air = USUAL.climate(List.of(night(DATE, low, 20), night(DATE.plusDays(4), 2, 8)));
    Moment start = NOON.plusHours(hours);
    double elapsed = until(air, start, needed);
    double age = EquivalentAge.ageSeconds(air, start, elapsed, DOUBLING);
    assertEquals(needed, age, 1e-6 * needed + 1e-6);
  }

  @Test
  void whatRestsInTheUsualAirGoesOnInAWarmNight() {
    EquivalentAge.Rate warm = air -> air.celsius() > 25 ? 1 : 0;
    Climate air = USUAL.climate(List.of(night(DATE.plusDays(3), 30, 30)));
    double until = EquivalentAge.secondsUntil(air, NOON, 3600, warm).orElseThrow();
    assertTrue(until > 3 * 86_400 && until < 4 * 86_400, until + " s");
    assertEquals(0, EquivalentAge.secondsUntil(air, NOON, 0, warm).orElseThrow());
    assertTrue(EquivalentAge.secondsUntil(air, NOON, 864_000, warm).isEmpty());
    Climate tooFar = USUAL.climate(List.of(night(DATE.plusDays(500), 30, 30)));
    assertTrue(EquivalentAge.secondsUntil(tooFar, NOON, 3600, warm).isEmpty());
  }

  @Test
  void nonsenseNightsAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> night(DATE, 12, 4));
    assertThrows(IllegalArgumentException.class, () -> night(DATE, -50, 4));
    assertThrows(IllegalArgumentException.class, () -> night(DATE, 4, Double.NaN));
    assertThrows(
        IllegalArgumentException.class, () -> new Night(DATE, 4, 9, OptionalDouble.of(120), true));
    List<Night> twice = List.of(night(DATE, 4, 9), night(DATE, 5, 9));
    assertThrows(IllegalArgumentException.class, () -> USUAL.climate(twice));
    List<Night> backward = List.of(night(DATE, 4, 9), night(DATE.plusDays(-5), 5, 9));
    assertThrows(IllegalArgumentException.class, () -> USUAL.climate(backward));
  }

  @Test
  void tellsWhenEveryDayIsUsualAgain() {
    assertEquals(0, USUAL.climate(List.of()).secondsUntilUsual(NOON));
    Climate cold = USUAL.climate(List.of(night(DATE, 0, 20)));
    assertEquals(36 * 3600.0, cold.secondsUntilUsual(NOON));
    assertEquals(0, cold.secondsUntilUsual(NOON.plusDays(3)));
  }

  private static double line(double[][] points, double hour) {
    int i = 1;
    while (points[i][0] < hour) {
      i++;
    }
    double share = (hour - points[i - 1][0]) / (points[i][0] - points[i - 1][0]);
    return points[i - 1][1] + share * (points[i][1] - points[i - 1][1]);
  }

  private static Night night(Date date, double low, double high) {
    return new Night(date, low, high, OptionalDouble.empty(), true);
  }

  private static double until(Climate air, Moment start, double needed) {
    return EquivalentAge.secondsUntil(air, start, needed, DOUBLING).orElseThrow();
  }
}
