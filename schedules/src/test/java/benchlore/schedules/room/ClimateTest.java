package benchlore.schedules.room;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.schedules.time.Moment;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class ClimateTest {
  private static Moment at(int hour, int minute) {
    return Moment.of(2026, 1, 1, hour, minute);
  }

  @Test
  void swingIsColdestAtFiveAndWarmestAtThree() {
    Climate day = Climate.swing(4, 18, 50);
    assertEquals(4, day.at(at(5, 0)).celsius(), 1e-12);
    assertEquals(18, day.at(at(15, 0)).celsius(), 1e-12);
    assertEquals(11, day.at(at(10, 0)).celsius(), 1e-12);
    assertEquals(11, day.at(at(22, 0)).celsius(), 1e-12);
    assertEquals(4, day.lowestCelsius(), 1e-12);
    assertEquals(11, day.meanCelsius(), 1e-12);
  }

  @Property(tries = 200)
  void swingKeepsTheWaterUntilDewFalls(
      @ForAll @DoubleRange(min = -5, max = 20) double low,
      @ForAll @DoubleRange(min = 0, max = 20) double rise,
      @ForAll @DoubleRange(min = 20, max = 100) double humidity) {
    Climate day = Climate.swing(low, low + rise, humidity);
    double dew = Psychrometry.dewPointCelsius(low + rise, humidity);
    for (Climate.Reading hour : day.hours()) {
      double expected = Math.min(dew, hour.celsius());
      assertEquals(expected, hour.dewPointCelsius(), 1e-6);
    }
  }

  @Test
  void straightLinesBetweenHoursAndOverMidnight() {
    Climate day = Climate.swing(5, 19, 60);
    double before = day.at(at(23, 0)).celsius();
    double after = day.at(at(0, 0)).celsius();
    assertEquals(0.5 * (before + after), day.at(at(23, 30)).celsius(), 1e-12);
  }

  @Test
  void heatingDriesTheAirAndLeavesTheDewPoint() {
    Climate cold = Climate.steady(6, 80);
    Climate heated = cold.withHeating(20, 6, 18);
    assertEquals(18, heated.at(at(23, 0)).celsius(), 1e-12);
    assertEquals(18, heated.at(at(2, 0)).celsius(), 1e-12);
    assertEquals(6, heated.at(at(12, 0)).celsius(), 1e-12);
    assertEquals(cold.at(at(2, 0)).dewPointCelsius(), heated.at(at(2, 0)).dewPointCelsius(), 1e-9);
    assertTrue(heated.at(at(2, 0)).relativeHumidityPercent() < 40);
  }

  @Test
  void heatingNeverCools() {
    assertEquals(Climate.steady(21, 50), Climate.steady(21, 50).withHeating(8, 18, 15));
  }

  @Test
  void nonsenseAirIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> new Climate.Reading(500, 50));
    assertThrows(IllegalArgumentException.class, () -> new Climate.Reading(Double.NaN, 50));
    assertThrows(IllegalArgumentException.class, () -> new Climate.Reading(20, 0));
    assertThrows(IllegalArgumentException.class, () -> new Climate.Reading(20, 101));
    assertThrows(IllegalArgumentException.class, () -> new Climate(List.of()));
  }
}
