package benchlore.schedules.compatibility;

import java.util.List;

/**
 * One pair decided.
 *
 * @param verdict the strictest of the reasons; unknown where there is none, or where a trait that
 *     is not written down might make it stricter
 * @param reasons every one that applies, in the order of the rules; empty where no rule covers the
 *     pair
 * @param missing the traits not written down that might make it stricter, each once
 * @param <R> what the rules of this table say besides
 */
public record Decision<R extends Reason>(Verdict verdict, List<R> reasons, List<String> missing) {
  /** Copies the lists; refuses a verdict that nothing speaks for. */
  public Decision {
    reasons = List.copyOf(reasons);
    missing = List.copyOf(missing);
    if (reasons.isEmpty() && verdict != Verdict.UNKNOWN) {
      throw new IllegalArgumentException("verdict must be UNKNOWN without reasons: " + verdict);
    }
  }
}
