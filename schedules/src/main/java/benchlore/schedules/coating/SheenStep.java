package benchlore.schedules.coating;

import java.util.Optional;

/**
 * One piece of work on the way to a sheen.
 *
 * @param what what is done
 * @param grade P grade, for the steps that sand; 0 otherwise
 * @param seconds the work's time, seconds
 * @param liquidCubicMetre finish it takes, losses included; 0 for the steps that take none
 * @param sheen the sheen of the finish used, for a coat
 */
public record SheenStep(
    Work what, int grade, double seconds, double liquidCubicMetre, Optional<Sheen> sheen) {
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

  /** Refuses nulls and negative or unreal figures. */
  public SheenStep {
    if (what == null || sheen == null) {
      throw new NullPointerException("what and sheen");
    }
    if (!(seconds >= 0) || !(liquidCubicMetre >= 0)) {
      throw new IllegalArgumentException("seconds and liquidCubicMetre must be 0 or more");
    }
  }
}
