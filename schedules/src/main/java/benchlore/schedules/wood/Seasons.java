package benchlore.schedules.wood;

/**
 * The two ends of the year the finished part will see, each as air averaged over weeks. Which is
 * which doesn't matter: a plan takes the moisture contents and sorts them.
 *
 * @param dry the driest season, often heated winter indoors
 * @param damp the dampest season
 */
public record Seasons(Air dry, Air damp) {
  /** Refuses nulls. */
  public Seasons {
    if (dry == null || damp == null) {
      throw new NullPointerException("dry and damp");
    }
  }

  /** Moisture content in the drier of the two, percent. */
  public double lowPercent() {
    return Math.min(dry.moisturePercent(), damp.moisturePercent());
  }

  /** Moisture content in the damper of the two, percent. */
  public double highPercent() {
    return Math.max(dry.moisturePercent(), damp.moisturePercent());
  }
}
