package benchlore.schedules.time;

import java.util.List;

/**
 * A day of the Gregorian calendar.
 *
 * <p>The idea: days are numbered, and a number follows from years of 365 days, a leap day every 4
 * years but not every 100 unless every 400, and months that from March on have 153 days in five.
 * Made from a year, month and day, or from text, for the years {@value #FIRST_YEAR} to {@value
 * #LAST_YEAR}; arithmetic runs on beyond them by the same rule. Source: the Gregorian calendar. The
 * JDK's own dates give the same (a test compares them); they aren't used here because a page's
 * script would carry all of them and counts slowly with {@code long}.
 *
 * @param epochDay days since 1 March 2000
 */
public record Date(int epochDay) implements Comparable<Date> {
  /** The first year a date is made for. */
  public static final int FIRST_YEAR = 1900;

  /** The last year a date is made for. */
  public static final int LAST_YEAR = 2200;

  private static final List<String> MONTHS =
      List.of(
          "January",
          "February",
          "March",
          "April",
          "May",
          "June",
          "July",
          "August",
          "September",
          "October",
          "November",
          "December");
  private static final Weekday[] WEEK = Weekday.values();
  private static final int FOUR_CENTURIES = 146_097;
  private static final int ISO_LETTERS = 10;

  /**
   * A day.
   *
   * @param year {@value #FIRST_YEAR} to {@value #LAST_YEAR}
   * @param month 1 to 12
   * @param day 1 to 31
   * @throws IllegalArgumentException if the calendar has no such day in those years
   */
  public static Date of(int year, int month, int day) {
    if (year < FIRST_YEAR || year > LAST_YEAR) {
      throw new IllegalArgumentException(
          "must be in the years " + FIRST_YEAR + " to " + LAST_YEAR + ": " + year);
    }
    if (month < 1 || month > 12 || day < 1 || day > length(year, month)) {
      throw new IllegalArgumentException(
          "must be a day of the calendar: " + year + "-" + month + "-" + day);
    }
    return new Date(number(year, month, day));
  }

  /**
   * Reads {@code 2027-01-12}.
   *
   * @throws IllegalArgumentException if it isn't written so or is no day {@link #of} knows
   */
  public static Date parse(String text) {
    IsoText iso = new IsoText(text);
    iso.holds(ISO_LETTERS, 4, '-');
    iso.holds(ISO_LETTERS, 7, '-');
    return of(iso.number(0, 4), iso.number(5, 7), iso.number(8, ISO_LETTERS));
  }

  private static int length(int year, int month) {
    if (month == 2) {
      return year % 4 == 0 && (year % 100 != 0 || year % 400 == 0) ? 29 : 28;
    }
    return month == 4 || month == 6 || month == 9 || month == 11 ? 30 : 31;
  }

  private static int number(int year, int month, int day) {
    int march = month < 3 ? month + 9 : month - 3;
    int whole = (month < 3 ? year - 1 : year) - 2000;
    int leap = Math.floorDiv(whole, 4) - Math.floorDiv(whole, 100) + Math.floorDiv(whole, 400);
    return whole * 365 + leap + (march * 153 + 2) / 5 + day - 1;
  }

  /** Years since 2000 that begin in March. */
  private int marchYear() {
    int cycle = Math.floorDiv(epochDay, FOUR_CENTURIES);
    int day = epochDay - cycle * FOUR_CENTURIES;
    return cycle * 400 + (day - day / 1460 + day / 36_524 - day / (FOUR_CENTURIES - 1)) / 365;
  }

  /** Days since the last 1 March. */
  private int marchDay() {
    return epochDay - number(marchYear() + 2000, 3, 1);
  }

  /** Months since the last March, 0 to 11. */
  private int marchMonth() {
    return (marchDay() * 5 + 2) / 153;
  }

  /** The year. */
  public int year() {
    return marchYear() + 2000 + (marchMonth() < 10 ? 0 : 1);
  }

  /** The month, 1 to 12. */
  public int month() {
    int march = marchMonth();
    return march < 10 ? march + 3 : march - 9;
  }

  /** The day of the month, 1 to 31. */
  public int dayOfMonth() {
    return marchDay() - (marchMonth() * 153 + 2) / 5 + 1;
  }

  /** The day of the week. */
  public Weekday weekday() {
    // 1 March 2000 was a Wednesday.
    return WEEK[Math.floorMod(epochDay + 2, 7)];
  }

  /** The day so many days later, or earlier if negative. */
  public Date plusDays(int days) {
    return new Date(epochDay + days);
  }

  /** Days from this one to another; negative if that is earlier. */
  public int daysUntil(Date other) {
    return other.epochDay - epochDay;
  }

  /** Its first moment. */
  public Moment midnight() {
    return new Moment(epochDay * Moment.DAY_SECONDS);
  }

  /**
   * A moment of this day.
   *
   * @param hour 0 to 23
   * @param minute 0 to 59
   * @throws IllegalArgumentException if the clock has no such time
   */
  public Moment at(int hour, int minute) {
    return at(hour, minute, 0);
  }

  /**
   * A moment of this day.
   *
   * @param hour 0 to 23
   * @param minute 0 to 59
   * @param second 0 to 59
   * @throws IllegalArgumentException if the clock has no such time
   */
  public Moment at(int hour, int minute, int second) {
    if (hour < 0 || hour > 23 || minute < 0 || minute > 59 || second < 0 || second > 59) {
      throw new IllegalArgumentException(
          "must be a time of day: " + hour + ":" + minute + ":" + second);
    }
    return midnight().plusSeconds((hour * 60 + minute) * 60 + second);
  }

  /** True if this day is the earlier. */
  public boolean isBefore(Date other) {
    return epochDay < other.epochDay;
  }

  /** True if this day is the later. */
  public boolean isAfter(Date other) {
    return epochDay > other.epochDay;
  }

  @Override
  public int compareTo(Date other) {
    return Integer.compare(epochDay, other.epochDay);
  }

  /** With its weekday and year: {@code Sat 3 April 2027}. */
  public String words() {
    return dayWords() + MONTHS.get(month() - 1) + " " + year();
  }

  /** With its weekday: {@code Sat 3 Apr}. */
  public String shortWords() {
    String month = MONTHS.get(month() - 1);
    return dayWords() + month.substring(0, Math.min(month.length(), month() == 9 ? 4 : 3));
  }

  private String dayWords() {
    return weekday().words().substring(0, 3) + " " + dayOfMonth() + " ";
  }

  /** {@code 2027-01-12}. */
  @Override
  public String toString() {
    return year() + "-" + IsoText.two(month()) + "-" + IsoText.two(dayOfMonth());
  }
}
