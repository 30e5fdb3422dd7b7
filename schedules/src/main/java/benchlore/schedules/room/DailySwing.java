package benchlore.schedules.room;

import benchlore.schedules.quantity.ComponentException;
import benchlore.schedules.time.Date;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How a room warms and cools day after day, and the nights that were otherwise.
 *
 * <pre>
 * warmest at 15:00, coldest at 05:00, straight lines between; the water in the air unchanged
 * the night that begins on a date: its high is that date's 15:00, its low the next date's 05:00
 * </pre>
 *
 * <p>A night that was otherwise bends the lines that meet in its two points and no others: the rise
 * of its first morning ends at its high, the fall runs from its high to its low, and the rise after
 * it runs from its low to the usual high, or to that of the next such night. So the air has no
 * jumps. Dew points go straight from one night's to the next over the morning. Common practice for
 * a rough day; give 24 readings where a logger has them.
 *
 * @param lowCelsius at 05:00
 * @param highCelsius at 15:00, not below {@code lowCelsius}
 * @param afternoonHumidityPercent relative humidity at 15:00, 1 to 100; where the night air would
 *     pass saturation it stays at 100 (dew falls)
 * @param heater what warms the room part of the day
 */
public record DailySwing(
    double lowCelsius,
    double highCelsius,
    double afternoonHumidityPercent,
    Optional<Heater> heater) {
  /**
   * A heater that runs part of every day. Dry heat: the dew point stays, so the relative humidity
   * falls. (An unvented burner adds water and belongs nowhere near a finish.)
   *
   * @param fromHourInclusive 0 to 23
   * @param toHourExclusive 1 to 24; at or below {@code fromHourInclusive} runs over midnight
   * @param celsius the thermostat; hours already warmer stay as they are
   */
  public record Heater(int fromHourInclusive, int toHourExclusive, double celsius) {
    Climate.Reading warmed(int hour, Climate.Reading air) {
      boolean on =
          fromHourInclusive < toHourExclusive
              ? hour >= fromHourInclusive && hour < toHourExclusive
              : hour >= fromHourInclusive || hour < toHourExclusive;
      return on && air.celsius() < celsius ? reading(celsius, air.dewPointCelsius()) : air;
    }
  }

  /**
   * A night that was, or will be, colder or warmer than usual.
   *
   * @param date the day it begins on
   * @param lowCelsius at 05:00 of the morning after
   * @param highCelsius at 15:00 of the day it begins on, not below {@code lowCelsius}
   * @param afternoonHumidityPercent at 15:00 of the day it begins on; empty: the air holds as much
   *     water as usual
   * @param heated whether the heater, if there is one, ran as usual; if not, it stood still for the
   *     24 hours from 15:00
   */
  public record Night(
      Date date,
      double lowCelsius,
      double highCelsius,
      OptionalDouble afternoonHumidityPercent,
      boolean heated) {
    /** Refuses air outside the range the formulas hold for, and a low above the high. */
    public Night {
      Objects.requireNonNull(date, "date");
      Climate.Reading low = new Climate.Reading(lowCelsius, 100);
      Climate.Reading high = new Climate.Reading(highCelsius, afternoonHumidityPercent.orElse(100));
      if (low.celsius() > high.celsius()) {
        throw new ComponentException("lowCelsius", "must not be above highCelsius");
      }
    }
  }

  /** What one night, the usual or another, gives the lines. */
  private record Ends(double low, double high, double dew, boolean heated) {}

  /**
   * The air of the room.
   *
   * @param nights those that were otherwise, in order of their dates, each date once
   */
  public Climate climate(List<Night> nights) {
    Ends usual =
        new Ends(
            lowCelsius,
            highCelsius,
            new Climate.Reading(highCelsius, afternoonHumidityPercent).dewPointCelsius(),
            true);
    List<Climate.Day> days = new ArrayList<>();
    Ends before = usual;
    for (int i = 0; i < nights.size(); i++) {
      Night night = nights.get(i);
      Ends ends = ends(night, usual.dew());
      days.add(new Climate.Day(night.date(), day(before, ends)));
      Date next = night.date().plusDays(1);
      boolean runsOn = i + 1 < nights.size() && nights.get(i + 1).date().equals(next);
      if (!runsOn) {
        days.add(new Climate.Day(next, day(ends, usual)));
      }
      before = runsOn ? ends : usual;
    }
    return new Climate(day(usual, usual), days);
  }

  private static Ends ends(Night night, double usualDew) {
    double high = night.highCelsius();
    OptionalDouble humidity = night.afternoonHumidityPercent();
    double dew =
        humidity.isPresent()
            ? Psychrometry.dewPointCelsius(high, humidity.getAsDouble())
            : usualDew;
    return new Ends(night.lowCelsius(), high, dew, night.heated());
  }

  /** The hours of a day that lies between two nights. */
  private List<Climate.Reading> day(Ends before, Ends after) {
    List<Climate.Reading> hours = new ArrayList<>();
    for (int h = 0; h < 24; h++) {
      boolean rising = h >= 5 && h <= 15;
      double low = h <= 15 ? before.low() : after.low();
      double high = h < 5 ? before.high() : after.high();
      double share = rising ? (h - 5) / 10.0 : ((29 - h) % 24) / 14.0;
      double celsius = low + share * (high - low);
      double turn = h < 5 ? 0 : rising ? share : 1;
      double dew = before.dew() + turn * (after.dew() - before.dew());
      Climate.Reading air = reading(celsius, dew);
      boolean heated = heater.isPresent() && (h < 15 ? before : after).heated();
      hours.add(heated ? heater.get().warmed(h, air) : air);
    }
    return hours;
  }

  private static Climate.Reading reading(double celsius, double dewPointCelsius) {
    double percent = Psychrometry.relativeHumidityPercent(celsius, dewPointCelsius);
    return new Climate.Reading(celsius, percent < 1 ? 1 : percent);
  }
}
