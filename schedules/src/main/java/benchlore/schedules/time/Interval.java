package benchlore.schedules.time;

import benchlore.schedules.quantity.ComponentException;
import java.util.Objects;

/**
 * The time between two moments.
 *
 * @param start first moment
 * @param end first moment after it, not before {@code start}
 */
public record Interval(Moment start, Moment end) {
  /** Refuses an interval that ends before it starts. */
  public Interval {
    Objects.requireNonNull(start, "start");
    Objects.requireNonNull(end, "end");
    if (end.isBefore(start)) {
      throw new ComponentException("end", "must not be before start");
    }
  }

  /** An interval so many seconds long, 0 or more. */
  public static Interval lasting(Moment start, double seconds) {
    return new Interval(start, start.plusSeconds(seconds));
  }

  /** Its length in seconds. */
  public double seconds() {
    return start.secondsUntil(end);
  }
}
