package benchlore.schedules.coating;

import benchlore.schedules.time.Duration;

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
    if (stage == null || soonest == null || planned == null) {
      throw new NullPointerException("stage, soonest and planned");
    }
    if (soonest.isNegative() || planned.compareTo(soonest) < 0) {
      throw new IllegalArgumentException("waits must be 0 or more, planned not below soonest");
    }
  }
}
