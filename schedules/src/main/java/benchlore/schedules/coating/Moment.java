package benchlore.schedules.coating;

import java.time.Duration;
import java.time.LocalDateTime;

/** A moment in words, told from the application on: "at 03:00 the next day". */
final class Moment {
  private static final int SECONDS_A_DAY = 86_400;

  private Moment() {}

  static String words(LocalDateTime moment, LocalDateTime from) {
    LocalDateTime midnight = from.minusSeconds(from.toLocalTime().toSecondOfDay());
    long days = Duration.between(midnight, moment).getSeconds() / SECONDS_A_DAY;
    String clock = clock(moment);
    if (days == 0) {
      return clock + " that day";
    }
    return days == 1 ? clock + " the next day" : clock + ", " + days + " days later";
  }

  /** The clock time alone: "07:30". */
  static String clock(LocalDateTime moment) {
    return two(moment.getHour()) + ":" + two(moment.getMinute());
  }

  /** The next full five minutes: nobody starts a coat at 12:25:21. */
  static LocalDateTime upToFiveMinutes(LocalDateTime moment) {
    LocalDateTime minute = moment.withSecond(0).withNano(0);
    LocalDateTime up = minute.isBefore(moment) ? minute.plusMinutes(1) : minute;
    int over = up.getMinute() % 5;
    return over == 0 ? up : up.plusMinutes(5 - over);
  }

  private static String two(int number) {
    return number < 10 ? "0" + number : Integer.toString(number);
  }
}
