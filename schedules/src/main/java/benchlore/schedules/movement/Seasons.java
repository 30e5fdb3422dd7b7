package benchlore.schedules.movement;

import benchlore.schedules.quantity.Provenance;
import java.util.Objects;

/**
 * The two ends of the year the finished part will see, each as air averaged over weeks. Which is
 * which doesn't matter: a plan takes the moisture contents and sorts them.
 *
 * @param dry the driest season, often heated winter indoors
 * @param damp the dampest season
 * @param from where the two come from
 */
public record Seasons(SteadyAir dry, SteadyAir damp, Provenance from) {
  /** Refuses nulls. */
  public Seasons {
    Objects.requireNonNull(dry, "dry");
    Objects.requireNonNull(damp, "damp");
    Objects.requireNonNull(from, "from");
  }

  /** Two seasons given by the person asking. */
  public static Seasons of(SteadyAir dry, SteadyAir damp) {
    return new Seasons(dry, damp, Provenance.input());
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
