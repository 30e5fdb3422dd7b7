package benchlore.schedules.time;

import benchlore.schedules.quantity.ComponentException;

/**
 * A length of time.
 *
 * @param seconds its seconds; negative where it runs backward
 */
public record Duration(double seconds) implements Comparable<Duration> {
  /** No time at all. */
  public static final Duration ZERO = new Duration(0);

  private static final double STEP_SECONDS = 300;

  /** Refuses what is no number. */
  public Duration {
    if (Double.isNaN(seconds) || Double.isInfinite(seconds)) {
      throw new ComponentException("seconds", "must be a number");
    }
  }

  /** So many seconds. */
  public static Duration ofSeconds(double seconds) {
    return new Duration(seconds);
  }

  /** So many hours. */
  public static Duration ofHours(double hours) {
    return new Duration(hours * 3600);
  }

  /** From one moment to another; negative if the second is the earlier. */
  public static Duration between(Moment from, Moment to) {
    return new Duration(from.secondsUntil(to));
  }

  /** Work takes whole steps of five minutes: the next that holds it. */
  public Duration upToFiveMinutes() {
    return new Duration(Math.ceil(seconds / STEP_SECONDS) * STEP_SECONDS);
  }

  /** True below no time at all. */
  public boolean isNegative() {
    return seconds < 0;
  }

  @Override
  public int compareTo(Duration other) {
    return Double.compare(seconds, other.seconds);
  }
}
