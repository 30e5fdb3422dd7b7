package benchlore.schedules.coating;

import benchlore.schedules.material.Sheen;
import benchlore.schedules.quantity.ComponentException;
import benchlore.schedules.quantity.Numeric;
import java.util.Objects;
import java.util.Optional;

/**
 * One piece of work on the way to a sheen.
 *
 * @param what what is done
 * @param grade P grade, for the steps that sand; 0 otherwise
 * @param seconds the work's time, seconds
 * @param supplies what it uses up
 * @param sheen the sheen of the finish used, for a coat
 */
public record SheenStep(
    Work what, int grade, double seconds, Supplies supplies, Optional<Sheen> sheen) {
  /** Kinds of work. */
  public enum Work {
    /** Sand the film level. */
    LEVEL,
    /** Refine the scratch of the step before. */
    REFINE,
    /** Even the scratch along the grain with finest wool or a grey pad, lubricated. */
    EVEN_PAD,
    /** Rub with pumice in oil or water. */
    PUMICE,
    /** Polish with rottenstone or compound. */
    POLISH,
    /** Scuff the film dull so that the next coat holds. */
    SCUFF,
    /** Put on one more coat. */
    COAT
  }

  /** Refuses nulls and a negative or unreal time. */
  public SheenStep {
    Objects.requireNonNull(what, "what");
    Objects.requireNonNull(supplies, "supplies");
    Objects.requireNonNull(sheen, "sheen");
    if (!(seconds >= 0)) {
      throw new ComponentException("seconds", "must be 0 or more: " + Numeric.text(seconds));
    }
  }
}
