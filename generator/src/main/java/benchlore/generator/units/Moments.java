package benchlore.generator.units;

import benchlore.schedules.time.Date;
import benchlore.schedules.time.Moment;

/** Shows dates and times: {@code Sat 3 April 2027}, {@code 18:30}. */
public final class Moments {
  private static final int TO_THE_MINUTE = 16;

  private Moments() {}

  /** A day with its weekday and year. */
  public static String day(Date day) {
    return day.words();
  }

  /** A day with its weekday, no year, and the time. */
  public static String shortly(Moment moment) {
    return moment.date().shortWords() + ", " + moment.clock();
  }

  /** The time of day, to the minute. */
  public static String clock(Moment moment) {
    return moment.clock();
  }

  /** {@link #day} as an element whose words a page's script may put the reader's own way. */
  public static String dayHtml(Date day) {
    return element(day.toString(), "day", day(day));
  }

  /** {@link #shortly}, the same. */
  public static String shortlyHtml(Moment moment) {
    return element(minute(moment), "moment", shortly(moment));
  }

  /** {@link #clock}, the same. */
  public static String clockHtml(Moment moment) {
    return element(minute(moment), "clock", clock(moment));
  }

  private static String minute(Moment moment) {
    return moment.toString().substring(0, TO_THE_MINUTE);
  }

  private static String element(String iso, String as, String words) {
    return "<time datetime=\"" + iso + "\" data-as=\"" + as + "\">" + words + "</time>";
  }
}
