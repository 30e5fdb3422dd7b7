package benchlore.schedules.coating;

import benchlore.schedules.quantity.ComponentException;
import benchlore.schedules.time.Duration;
import java.util.Objects;

/**
 * When one coat reaches a stage, counted from its application.
 *
 * @param stage the stage
 * @param soonest by the short end of the stated range
 * @param planned the figure to plan by: the long end of the range, but the short end for the
 *     closing of the recoat window
 */
public record StageTime(Stage stage, Duration soonest, Duration planned) {
  /** Refuses nulls and negative waits. */
  public StageTime {
    Objects.requireNonNull(stage, "stage");
    Objects.requireNonNull(soonest, "soonest");
    Objects.requireNonNull(planned, "planned");
    if (soonest.isNegative() || planned.compareTo(soonest) < 0) {
      throw new ComponentException("waits", "must be 0 or more, planned not below soonest");
    }
  }
}
