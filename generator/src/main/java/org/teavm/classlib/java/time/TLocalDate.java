package org.teavm.classlib.java.time;

import java.time.DateTimeException;

/** A day of the Gregorian calendar. */
public final class TLocalDate {
  private final int year;
  private final int month;
  private final int day;

  private TLocalDate(int year, int month, int day) {
    this.year = year;
    this.month = month;
    this.day = day;
  }

  /**
   * A day.
   *
   * @throws DateTimeException if there is no such day
   */
  public static TLocalDate of(int year, int month, int day) {
    if (month < 1 || month > 12 || day < 1 || day > length(year, month)) {
      throw new DateTimeException("");
    }
    return new TLocalDate(year, month, day);
  }

  private static int length(int year, int month) {
    if (month == 2) {
      return year % 4 == 0 && (year % 100 != 0 || year % 400 == 0) ? 29 : 28;
    }
    return month == 4 || month == 6 || month == 9 || month == 11 ? 30 : 31;
  }

  /** The year. */
  public int getYear() {
    return year;
  }

  /** 1 to 12. */
  public int getMonthValue() {
    return month;
  }

  /** 1 to 31. */
  public int getDayOfMonth() {
    return day;
  }

  /** A moment of this day. */
  public TLocalDateTime atTime(int hour, int minute) {
    return atTime(hour, minute, 0);
  }

  /** A moment of this day. */
  public TLocalDateTime atTime(int hour, int minute, int second) {
    return atTime(hour, minute, second, 0);
  }

  /**
   * A moment of this day.
   *
   * @throws DateTimeException if there is no such time of day
   */
  public TLocalDateTime atTime(int hour, int minute, int second, int nano) {
    if (hour < 0 || hour > 23 || minute < 0 || minute > 59 || second < 0 || second > 59) {
      throw new DateTimeException("");
    }
    return new TLocalDateTime(this, (hour * 60 + minute) * 60 + second, nano);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof TLocalDate date
        && year == date.year
        && month == date.month
        && day == date.day;
  }

  @Override
  public int hashCode() {
    return (year * 12 + month) * 31 + day;
  }
}
