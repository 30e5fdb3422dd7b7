package benchlore.schedules.numeric;

import java.time.LocalDate;
import java.time.LocalDateTime;

/**
 * Arithmetic on local wall-clock times by whole seconds; no zones, no leap seconds.
 *
 * <p>The idea: a moment is a number of days and a second of its day; the number of days since 1
 * March 2000 follows from years of 365 days, a leap day every 4 years but not every 100 unless
 * every 400, and months that from March on have 153 days in five. Valid for the years 1 to 9999.
 * Source: the Gregorian calendar. The JDK's own classes give the same (a test compares them); these
 * few lines stand here because they are a fifth of a script that carries those.
 */
public final class WallTime {
  private static final int DAY = 86_400;
  private static final int FOUR_CENTURIES = 146_097;

  private WallTime() {}

  /** A moment so many whole seconds later, or earlier if negative. */
  public static LocalDateTime plus(LocalDateTime moment, double seconds) {
    double second = secondOfDay(moment) + seconds;
    double days = Math.floor(second / DAY);
    int rest = Numeric.round(second - days * DAY);
    int day = number(moment.getYear(), moment.getMonthValue(), moment.getDayOfMonth());
    int[] date = date(day + Numeric.round(days));
    return LocalDate.of(date[0], date[1], date[2])
        .atTime(rest / 3600, rest / 60 % 60, rest % 60, nano(moment));
  }

  /** A moment so many seconds later, or earlier if negative. */
  public static LocalDateTime plus(LocalDateTime moment, long seconds) {
    return plus(moment, (double) seconds);
  }

  /** Whole seconds from one moment to another, rounded down; negative if the second is earlier. */
  public static double seconds(LocalDateTime from, LocalDateTime to) {
    int days =
        number(to.getYear(), to.getMonthValue(), to.getDayOfMonth())
            - number(from.getYear(), from.getMonthValue(), from.getDayOfMonth());
    double whole = days * (double) DAY + secondOfDay(to) - secondOfDay(from);
    return nano(to) < nano(from) ? whole - 1 : whole;
  }

  /** Below, at or above 0 as the first moment is before, at or after the second. */
  public static int compare(LocalDateTime one, LocalDateTime two) {
    return one.isBefore(two) ? -1 : two.isBefore(one) ? 1 : 0;
  }

  /** The first moment of a moment's day. */
  public static LocalDateTime midnight(LocalDateTime moment) {
    return moment.toLocalDate().atTime(0, 0);
  }

  /** The first moment of a moment's hour. */
  public static LocalDateTime hour(LocalDateTime moment) {
    return plus(midnight(moment), moment.getHour() * 3600.0);
  }

  /** The first moment of a moment's minute. */
  public static LocalDateTime minute(LocalDateTime moment) {
    return plus(hour(moment), moment.getMinute() * 60.0);
  }

  /** A day so many days later. */
  public static LocalDate plusDays(LocalDate day, int days) {
    int[] date = date(day(day) + days);
    return LocalDate.of(date[0], date[1], date[2]);
  }

  /** A day's number: that of the day after is one more. */
  public static int day(LocalDate day) {
    return number(day.getYear(), day.getMonthValue(), day.getDayOfMonth());
  }

  /** A day's place in the week, Monday being 0. */
  public static int weekday(LocalDate day) {
    // 1 March 2000 was a Wednesday.
    return Math.floorMod(day(day) + 2, 7);
  }

  @SuppressWarnings("JavaLocalDateTimeGetNano") // the seconds are counted beside it
  private static int nano(LocalDateTime moment) {
    return moment.getNano();
  }

  private static int secondOfDay(LocalDateTime moment) {
    return moment.getHour() * 3600 + moment.getMinute() * 60 + moment.getSecond();
  }

  /** Days since 1 March 2000. */
  private static int number(int year, int month, int day) {
    int march = month < 3 ? month + 9 : month - 3;
    int whole = (month < 3 ? year - 1 : year) - 2000;
    int leap = Math.floorDiv(whole, 4) - Math.floorDiv(whole, 100) + Math.floorDiv(whole, 400);
    return whole * 365 + leap + (march * 153 + 2) / 5 + day - 1;
  }

  /** Year, month and day of such a number. */
  private static int[] date(int number) {
    int cycle = Math.floorDiv(number, FOUR_CENTURIES);
    int day = number - cycle * FOUR_CENTURIES;
    int year = (day - day / 1460 + day / 36_524 - day / (FOUR_CENTURIES - 1)) / 365;
    int ofYear = day - (year * 365 + year / 4 - year / 100);
    int march = (ofYear * 5 + 2) / 153;
    int ofMonth = ofYear - (march * 153 + 2) / 5 + 1;
    int month = march < 10 ? march + 3 : march - 9;
    return new int[] {cycle * 400 + year + 2000 + (month < 3 ? 1 : 0), month, ofMonth};
  }
}
