package benchlore.generator.units;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Shows dates and times: {@code Sat 3 April 2027}, {@code 18:30}. */
public final class Moments {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("EEE d MMMM uuuu", Locale.UK);
  private static final DateTimeFormatter SHORT =
      DateTimeFormatter.ofPattern("EEE d MMM", Locale.UK);
  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.UK);

  private Moments() {}

  /** A day with its weekday and year. */
  public static String day(LocalDate day) {
    return DAY.format(day);
  }

  /** A day with its weekday, no year, and the time. */
  public static String shortly(LocalDateTime moment) {
    return SHORT.format(moment) + ", " + CLOCK.format(moment);
  }

  /** The time of day, to the minute. */
  public static String clock(LocalDateTime moment) {
    return CLOCK.format(moment);
  }
}
