package benchlore.schedules.coating;

import benchlore.schedules.material.FinishFamily;
import benchlore.schedules.quantity.Provenance;
import java.util.Optional;

/**
 * One row of the compatibility table: what one family does on another.
 *
 * @param upper the family to put on
 * @param under the family already there
 * @param verdict whether it holds
 * @param waitUntil the stage the under coat must have reached
 * @param barrier the family to put between, for {@link Verdict#WITH_BARRIER}; else empty
 * @param why the reason, a plain sentence
 * @param from where the row comes from
 */
public record OverRule(
    FinishFamily upper,
    FinishFamily under,
    Verdict verdict,
    Stage waitUntil,
    Optional<FinishFamily> barrier,
    String why,
    Provenance from) {
  /** Whether one family holds on another. */
  public enum Verdict {
    /** Holds as it is. */
    YES,
    /** Holds on a scuffed surface. */
    SCUFFED,
    /** Holds with another finish between. */
    WITH_BARRIER,
    /** Does not hold. */
    NO
  }

  /** Refuses nulls, a barrier verdict without a barrier, and a barrier without that verdict. */
  public OverRule {
    if (upper == null || under == null || verdict == null || waitUntil == null || barrier == null) {
      throw new NullPointerException("upper, under, verdict, waitUntil and barrier");
    }
    if (why == null || from == null) {
      throw new NullPointerException("why and from");
    }
    if ((verdict == Verdict.WITH_BARRIER) != barrier.isPresent()) {
      throw new IllegalArgumentException(
          "barrier must be given for WITH_BARRIER and for nothing else: " + upper + ", " + under);
    }
    if (why.isEmpty()) {
      throw new IllegalArgumentException("why must not be empty");
    }
  }
}
