package benchlore.schedules.coating;

import benchlore.schedules.material.Sheen;
import benchlore.schedules.quantity.ComponentException;
import benchlore.schedules.time.Moment;
import java.util.Objects;
import java.util.Optional;

/**
 * One coat of a sequence.
 *
 * @param number 1 for the first
 * @param start when it goes on
 * @param scuff why the coat under it is sanded first, if it is
 * @param sheen the sheen to use for this coat; empty for a finish sold in none
 * @param drying how it dries
 */
public record CoatStep(
    int number, Moment start, ScuffReason scuff, Optional<Sheen> sheen, DryingTimes drying) {
  /** Refuses nulls and a number below 1. */
  public CoatStep {
    Objects.requireNonNull(start, "start");
    Objects.requireNonNull(scuff, "scuff");
    Objects.requireNonNull(sheen, "sheen");
    Objects.requireNonNull(drying, "drying");
    if (number < 1) {
      throw new ComponentException("number", "must be 1 or more: " + number);
    }
  }
}
