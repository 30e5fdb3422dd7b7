package benchlore.schedules.time;

import benchlore.schedules.quantity.ComponentException;
import benchlore.schedules.quantity.Numeric;

/**
 * A moment on the shop's wall clock, to the second: no zone, no summer time, no leap seconds; a
 * clock change is the maker's to notice.
 *
 * <p>Made for the years of {@link Date#of}; arithmetic runs on beyond them, exact for three million
 * years.
 *
 * @param epochSecond whole seconds since the midnight before 1 March 2000; a {@code double}, since
 *     every whole number up to 2^53 is exact in it and a page's script counts slowly with {@code
 *     long}
 */
public record Moment(double epochSecond) implements Comparable<Moment> {
  static final double DAY_SECONDS = 86_400;
  private static final double QUARTER_SECONDS = 900;
  private static final double HOUR_SECONDS = 3_600;
  private static final double MINUTE_SECONDS = 60;
  private static final int STEP_MINUTES = 5;
  private static final double MOST = 1e14;
  private static final int TO_THE_MINUTE = 16;
  private static final int TO_THE_SECOND = 19;

  /** Refuses parts of a second and what is no number. */
  public Moment {
    if (epochSecond != Math.floor(epochSecond) || Math.abs(epochSecond) > MOST) {
      throw new ComponentException("epochSecond", "must be a whole number");
    }
  }

  /** A moment by the calendar and the clock; see {@link Date#of} and {@link Date#at}. */
  public static Moment of(int year, int month, int day, int hour, int minute) {
    return Date.of(year, month, day).at(hour, minute);
  }

  /**
   * Reads {@code 2027-01-12T18:30} or {@code 2027-01-12T18:30:15}.
   *
   * @throws IllegalArgumentException if it isn't written so, or the calendar or the clock has no
   *     such moment
   */
  public static Moment parse(String text) {
    boolean seconds = text.length() == TO_THE_SECOND;
    int length = seconds ? TO_THE_SECOND : TO_THE_MINUTE;
    IsoText iso = new IsoText(text);
    iso.holds(length, 10, 'T');
    iso.holds(length, 13, ':');
    if (seconds) {
      iso.holds(length, 16, ':');
    }
    return Date.parse(text.substring(0, 10))
        .at(
            iso.number(11, 13),
            iso.number(14, TO_THE_MINUTE),
            seconds ? iso.number(17, TO_THE_SECOND) : 0);
  }

  /** Its day. */
  public Date date() {
    return new Date(Numeric.round(epochDay()));
  }

  private double epochDay() {
    return Math.floor(epochSecond / DAY_SECONDS);
  }

  /** Seconds since midnight, 0 to 86,399. */
  public int secondOfDay() {
    return Numeric.round(epochSecond - epochDay() * DAY_SECONDS);
  }

  /** The hour of the day, 0 to 23. */
  public int hour() {
    return secondOfDay() / 3600;
  }

  /** The minute of the hour, 0 to 59. */
  public int minute() {
    return secondOfDay() / 60 % 60;
  }

  /** The second of the minute, 0 to 59. */
  public int second() {
    return secondOfDay() % 60;
  }

  /** The moment so many seconds later, or earlier if negative; parts of a second are rounded. */
  public Moment plusSeconds(double seconds) {
    return new Moment(epochSecond + Math.floor(seconds + 0.5));
  }

  /** The moment so many minutes later, or earlier if negative. */
  public Moment plusMinutes(double minutes) {
    return plusSeconds(minutes * MINUTE_SECONDS);
  }

  /** The moment so many hours later, or earlier if negative. */
  public Moment plusHours(double hours) {
    return plusSeconds(hours * HOUR_SECONDS);
  }

  /** The same time of the day so many days later, or earlier if negative. */
  public Moment plusDays(double days) {
    return plusSeconds(days * DAY_SECONDS);
  }

  /** Seconds from this moment to another; negative if that is earlier. */
  public double secondsUntil(Moment other) {
    return other.epochSecond - epochSecond;
  }

  /** The first moment of its day. */
  public Moment startOfDay() {
    return startOf(DAY_SECONDS);
  }

  /** The first moment of its hour. */
  public Moment startOfHour() {
    return startOf(HOUR_SECONDS);
  }

  /** The first moment of its minute. */
  public Moment startOfMinute() {
    return startOf(MINUTE_SECONDS);
  }

  private Moment startOf(double seconds) {
    return new Moment(Math.floor(epochSecond / seconds) * seconds);
  }

  /** The next full five minutes, or itself: nobody starts a coat at 12:25:21. */
  public Moment upToFiveMinutes() {
    double step = STEP_MINUTES * MINUTE_SECONDS;
    return new Moment(Math.ceil(epochSecond / step) * step);
  }

  /** The next full quarter of an hour, or itself: the finest a wait can be told to. */
  public Moment upToQuarterHour() {
    return new Moment(Math.ceil(epochSecond / QUARTER_SECONDS) * QUARTER_SECONDS);
  }

  /** The last full quarter of an hour, or itself. */
  public Moment downToQuarterHour() {
    return startOf(QUARTER_SECONDS);
  }

  /** The later of this and another. */
  public Moment orLater(Moment other) {
    return isBefore(other) ? other : this;
  }

  /** True if this moment is the earlier. */
  public boolean isBefore(Moment other) {
    return epochSecond < other.epochSecond;
  }

  /** True if this moment is the later. */
  public boolean isAfter(Moment other) {
    return epochSecond > other.epochSecond;
  }

  @Override
  public int compareTo(Moment other) {
    return Double.compare(epochSecond, other.epochSecond);
  }

  /** The clock time to the minute: {@code 07:30}. */
  public String clock() {
    return IsoText.two(hour()) + ":" + IsoText.two(minute());
  }

  /** {@code 2027-01-12T18:30:00}. */
  @Override
  public String toString() {
    return date() + "T" + clock() + ":" + IsoText.two(second());
  }
}
