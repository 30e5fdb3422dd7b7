package benchlore.schedules.room;

import benchlore.schedules.quantity.ComponentException;
import benchlore.schedules.quantity.Numeric;
import benchlore.schedules.time.Date;
import benchlore.schedules.time.Moment;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The air of a room over one day, repeated every day but those that were otherwise: temperature and
 * relative humidity at each full hour, straight lines between, also over midnight.
 *
 * @param hours 24 readings, index = hour of the day, local wall-clock time
 * @param otherwise days with other air, in order, each date once
 */
public record Climate(List<Reading> hours, List<Day> otherwise) {
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
        throw new ComponentException("celsius", "must be -30 to 60: " + Numeric.text(celsius));
      }
      if (!(relativeHumidityPercent >= 1 && relativeHumidityPercent <= 100)) {
        throw new ComponentException(
            "relativeHumidityPercent",
            "must be 1 to 100: " + Numeric.text(relativeHumidityPercent));
      }
    }

    /** Dew point of this air, deg C. */
    public double dewPointCelsius() {
      return Psychrometry.dewPointCelsius(celsius, relativeHumidityPercent);
    }
  }

  /**
   * A day whose air was not the usual.
   *
   * @param date the day, from midnight to midnight
   * @param hours its 24 readings
   */
  public record Day(Date date, List<Reading> hours) {
    /** Copies the list; refuses any number of readings but 24. */
    public Day {
      Objects.requireNonNull(date, "date");
      hours = whole(hours);
    }
  }

  /**
   * Copies the lists, less the days whose air is the usual after all; refuses any number of
   * readings but 24, and days that are not in order.
   */
  public Climate {
    hours = whole(hours);
    List<Day> days = new ArrayList<>();
    int last = Integer.MIN_VALUE;
    for (Day day : otherwise) {
      int number = day.date().epochDay();
      if (number <= last) {
        throw new ComponentException("otherwise", "must be in order, each date once");
      }
      last = number;
      if (!same(day.hours(), hours)) {
        days.add(day);
      }
    }
    otherwise = List.copyOf(days);
  }

  /** The same day for ever. */
  public Climate(List<Reading> hours) {
    this(hours, List.of());
  }

  private static boolean same(List<Reading> one, List<Reading> two) {
    for (int h = 0; h < 24; h++) {
      Reading a = one.get(h);
      Reading b = two.get(h);
      if (a.celsius() != b.celsius()
          || a.relativeHumidityPercent() != b.relativeHumidityPercent()) {
        return false;
      }
    }
    return true;
  }

  private static List<Reading> whole(List<Reading> hours) {
    if (hours.size() != 24) {
      throw new ComponentException("hours", "must be 24 readings: " + hours.size());
    }
    return List.copyOf(hours);
  }

  /** The same air all day. */
  public static Climate steady(double celsius, double relativeHumidityPercent) {
    List<Reading> hours = new ArrayList<>();
    for (int h = 0; h < 24; h++) {
      hours.add(new Reading(celsius, relativeHumidityPercent));
    }
    return new Climate(hours);
  }

  /** A day and night swing without a heater, the same every day: see {@link DailySwing}. */
  public static Climate swing(
      double lowCelsius, double highCelsius, double afternoonHumidityPercent) {
    return new DailySwing(lowCelsius, highCelsius, afternoonHumidityPercent, Optional.empty())
        .climate(List.of());
  }

  /** The same room with a heater on for part of every day: see {@link DailySwing.Heater}. */
  public Climate withHeating(int fromHourInclusive, int toHourExclusive, double celsius) {
    DailySwing.Heater heater = new DailySwing.Heater(fromHourInclusive, toHourExclusive, celsius);
    List<Day> days = new ArrayList<>();
    for (Day day : otherwise) {
      days.add(new Day(day.date(), heated(day.hours(), heater)));
    }
    return new Climate(heated(hours, heater), days);
  }

  private static List<Reading> heated(List<Reading> hours, DailySwing.Heater heater) {
    List<Reading> heated = new ArrayList<>();
    for (int h = 0; h < 24; h++) {
      heated.add(heater.warmed(h, hours.get(h)));
    }
    return heated;
  }

  /** The air at a moment. */
  public Reading at(Moment moment) {
    return at(moment, 0);
  }

  /** The air so many seconds after a moment, or before it if negative; within fifty years. */
  public Reading at(Moment moment, int secondsLater) {
    int start = moment.secondOfDay();
    int second = Math.floorMod(start + secondsLater, DAY_SECONDS);
    int hour = second / 3600;
    double share = second % 3600 / 3600.0;
    List<Reading> today = hours;
    List<Reading> next = hours;
    if (!otherwise.isEmpty()) {
      int day = moment.date().epochDay();
      day = day + Math.floorDiv(start + secondsLater, DAY_SECONDS);
      today = hoursOf(day);
      next = hour < 23 ? today : hoursOf(day + 1);
    }
    Reading before = today.get(hour);
    Reading after = next.get((hour + 1) % 24);
    double celsius = before.celsius() + share * (after.celsius() - before.celsius());
    double rise = after.relativeHumidityPercent() - before.relativeHumidityPercent();
    return new Reading(celsius, before.relativeHumidityPercent() + share * rise);
  }

  private List<Reading> hoursOf(int number) {
    for (Day day : otherwise) {
      if (day.date().epochDay() == number) {
        return day.hours();
      }
    }
    return hours;
  }

  /**
   * The first stretch of 24 hours, of those counted from a moment of some date, that may meet air
   * other than the usual.
   *
   * @param from the date of the moment
   * @param stretch the least number it may have, the first being 0
   * @return its number; {@code Integer.MAX_VALUE} if all is as usual from there on
   */
  int nextOtherwise(Date from, int stretch) {
    for (Day day : otherwise) {
      int ahead = day.date().epochDay() - from.epochDay();
      if (ahead >= stretch) {
        // A stretch reaches into the next date and, in its last hour, towards the one after.
        return Math.max(stretch, ahead - 2);
      }
    }
    return Integer.MAX_VALUE;
  }

  /** Seconds from a moment until each day is as usual; 0 if they are already. */
  public double secondsUntilUsual(Moment from) {
    if (otherwise.isEmpty()) {
      return 0;
    }
    Date last = otherwise.get(otherwise.size() - 1).date();
    return Math.max(0, from.secondsUntil(last.plusDays(1).at(0, 0)));
  }

  /** The lowest temperature of the usual day, deg C. */
  public double lowestCelsius() {
    double lowest = hours.get(0).celsius();
    for (Reading reading : hours) {
      lowest = Math.min(lowest, reading.celsius());
    }
    return lowest;
  }

  /** The mean temperature of the usual day, deg C. */
  public double meanCelsius() {
    double sum = 0;
    for (Reading reading : hours) {
      sum = sum + reading.celsius();
    }
    return sum / hours.size();
  }
}
