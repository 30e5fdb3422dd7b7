package benchlore.schedules.room;

import benchlore.schedules.numeric.Numeric;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;

/**
 * The air of a room over one day, repeated every day: temperature and relative humidity at each
 * full hour, straight lines between.
 *
 * @param hours 24 readings, index = hour of the day, local wall-clock time
 */
public record Climate(List<Reading> hours) {
  private static final int DAY_SECONDS = 86_400;

  /**
   * Air at one moment.
   *
   * @param celsius air temperature, -30 to 60
   * @param relativeHumidityPercent 1 to 100
   */
  public record Reading(double celsius, double relativeHumidityPercent) {
    /** Refuses air outside the range the formulas hold for. */
    public Reading {
      if (!(celsius >= -30 && celsius <= 60)) {
        throw new IllegalArgumentException("celsius must be -30 to 60: " + Numeric.text(celsius));
      }
      if (!(relativeHumidityPercent >= 1 && relativeHumidityPercent <= 100)) {
        throw new IllegalArgumentException(
            "relativeHumidityPercent must be 1 to 100: " + Numeric.text(relativeHumidityPercent));
      }
    }

    /** Dew point of this air, deg C. */
    public double dewPointCelsius() {
      return Psychrometry.dewPointCelsius(celsius, relativeHumidityPercent);
    }
  }

  /** Copies the list; refuses any number of readings but 24. */
  public Climate {
    hours = List.copyOf(hours);
    if (hours.size() != 24) {
      throw new IllegalArgumentException("hours must be 24 readings: " + hours.size());
    }
  }

  /** The same air all day. */
  public static Climate steady(double celsius, double relativeHumidityPercent) {
    List<Reading> hours = new ArrayList<>();
    for (int h = 0; h < 24; h++) {
      hours.add(new Reading(celsius, relativeHumidityPercent));
    }
    return new Climate(hours);
  }

  /**
   * A day and night swing: coldest at 5 in the morning, warmest at 3 in the afternoon, straight
   * lines between, the water in the air unchanged (so the night is damp and the afternoon dry).
   * Common practice for a rough day; give 24 readings where a logger has them.
   *
   * @param lowCelsius at 05:00
   * @param highCelsius at 15:00, not below {@code lowCelsius}
   * @param afternoonHumidityPercent relative humidity at 15:00, 1 to 100; where the night air would
   *     pass saturation it stays at 100 (dew falls)
   * @return the day
   */
  public static Climate swing(
      double lowCelsius, double highCelsius, double afternoonHumidityPercent) {
    double dew = Psychrometry.dewPointCelsius(highCelsius, afternoonHumidityPercent);
    List<Reading> hours = new ArrayList<>();
    for (int h = 0; h < 24; h++) {
      double share = h >= 5 && h <= 15 ? (h - 5) / 10.0 : ((29 - h) % 24) / 14.0;
      double celsius = lowCelsius + share * (highCelsius - lowCelsius);
      hours.add(new Reading(celsius, Psychrometry.relativeHumidityPercent(celsius, dew)));
    }
    return new Climate(hours);
  }

  /**
   * The same room with a heater on for part of the day. Dry heat: the dew point stays, so the
   * relative humidity falls. (An unvented burner adds water and belongs nowhere near a finish.)
   *
   * @param fromHourInclusive 0 to 23
   * @param toHourExclusive 1 to 24; at or below {@code fromHourInclusive} runs over midnight
   * @param celsius the thermostat; hours already warmer stay as they are
   * @return the changed day
   */
  public Climate withHeating(int fromHourInclusive, int toHourExclusive, double celsius) {
    List<Reading> heated = new ArrayList<>();
    for (int h = 0; h < 24; h++) {
      Reading reading = hours.get(h);
      boolean on =
          fromHourInclusive < toHourExclusive
              ? h >= fromHourInclusive && h < toHourExclusive
              : h >= fromHourInclusive || h < toHourExclusive;
      if (on && reading.celsius() < celsius) {
        double dew = reading.dewPointCelsius();
        double percent = Psychrometry.relativeHumidityPercent(celsius, dew);
        heated.add(new Reading(celsius, percent < 1 ? 1 : percent));
      } else {
        heated.add(reading);
      }
    }
    return new Climate(heated);
  }

  /** The air at a moment. */
  public Reading at(LocalDateTime moment) {
    return at(moment, 0);
  }

  /** The air so many seconds after a moment, or before it if negative; within fifty years. */
  public Reading at(LocalDateTime moment, int secondsLater) {
    int start = moment.getHour() * 3600 + moment.getMinute() * 60 + moment.getSecond();
    int second = Math.floorMod(start + secondsLater, DAY_SECONDS);
    int hour = second / 3600;
    double share = second % 3600 / 3600.0;
    Reading before = hours.get(hour);
    Reading after = hours.get((hour + 1) % 24);
    double celsius = before.celsius() + share * (after.celsius() - before.celsius());
    double rise = after.relativeHumidityPercent() - before.relativeHumidityPercent();
    return new Reading(celsius, before.relativeHumidityPercent() + share * rise);
  }

  /** The lowest temperature of the day, deg C. */
  public double lowestCelsius() {
    double lowest = hours.get(0).celsius();
    for (Reading reading : hours) {
      lowest = Math.min(lowest, reading.celsius());
    }
    return lowest;
  }

  /** The mean temperature of the day, deg C. */
  public double meanCelsius() {
    double sum = 0;
    for (Reading reading : hours) {
      sum = sum + reading.celsius();
    }
    return sum / hours.size();
  }
}
