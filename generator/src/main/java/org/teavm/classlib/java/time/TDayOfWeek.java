package org.teavm.classlib.java.time;

/** The days of the week, Monday first. */
public enum TDayOfWeek {
  MONDAY,
  TUESDAY,
  WEDNESDAY,
  THURSDAY,
  FRIDAY,
  SATURDAY,
  SUNDAY;

  /** A day by its number, Monday being 1. */
  public static TDayOfWeek of(int number) {
    return values()[number - 1];
  }
}
