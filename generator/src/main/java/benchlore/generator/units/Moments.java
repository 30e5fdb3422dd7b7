package benchlore.generator.units;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
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

  /** {@link #day} as an element whose words a page's script may put the reader's own way. */
  public static String dayHtml(LocalDate day) {
    return element(day.toString(), "day", day(day));
  }

  /** {@link #shortly}, the same. */
  public static String shortlyHtml(LocalDateTime moment) {
    return element(minute(moment), "moment", shortly(moment));
  }

  /** {@link #clock}, the same. */
  public static String clockHtml(LocalDateTime moment) {
    return element(minute(moment), "clock", clock(moment));
  }

  private static String minute(LocalDateTime moment) {
    return moment.truncatedTo(ChronoUnit.MINUTES).toString();
  }

  private static String element(String iso, String as, String words) {
    return "<time datetime=\"" + iso + "\" data-as=\"" + as + "\">" + words + "</time>";
  }
}
