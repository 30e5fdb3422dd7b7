package benchlore.schedules.coating;

import benchlore.schedules.numeric.Numeric;
import benchlore.schedules.numeric.WallTime;
import java.time.LocalDateTime;

/** A moment in words, told from the application on: "at 03:00 the next day". */
final class Moment {
  private static final int SECONDS_A_DAY = 86_400;

  private Moment() {}

  static String words(LocalDateTime moment, LocalDateTime from) {
    LocalDateTime midnight = WallTime.midnight(from);
    int days = Numeric.round(Math.floor(WallTime.seconds(midnight, moment) / SECONDS_A_DAY));
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
    LocalDateTime minute = WallTime.minute(moment);
    LocalDateTime up = minute.isBefore(moment) ? WallTime.plus(minute, 60) : minute;
    int over = up.getMinute() % 5;
    return over == 0 ? up : WallTime.plus(up, (5 - over) * 60.0);
  }

  private static String two(int number) {
    return number < 10 ? "0" + number : Integer.toString(number);
  }
}
