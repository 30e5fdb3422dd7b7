package benchlore.schedules.calendar;

import benchlore.schedules.numeric.Numeric;
import benchlore.schedules.numeric.WallTime;
import java.time.LocalDateTime;

/**
 * A stretch of local wall-clock time.
 *
 * @param start first moment
 * @param end first moment after it, not before {@code start}
 */
public record Slot(LocalDateTime start, LocalDateTime end) {
  /** Refuses a stretch that ends before it starts. */
  public Slot {
    if (start == null || end == null) {
      throw new NullPointerException("start and end");
    }
    if (end.isBefore(start)) {
      throw new IllegalArgumentException("end must not be before start");
    }
  }

  /** Its length in seconds. */
  public long seconds() {
    return Numeric.toLong(WallTime.seconds(start, end));
  }
}
