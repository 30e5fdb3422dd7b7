package benchlore.schedules.compatibility;

import benchlore.schedules.compatibility.Condition.Match;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The rules of one table. The strictest that applies decides a pair, and every one that applies
 * gives its reason; what nobody wrote down is not guessed.
 *
 * @param rules in the order written
 * @param <R> what the rules of this table say besides
 */
public record Rules<R extends Reason>(List<Rule<R>> rules) {
  /** Copies the list. */
  public Rules {
    rules = List.copyOf(rules);
  }

  /**
   * Decides one pair.
   *
   * @param down what is known of the one that stands down, by name of the trait
   * @param across what is known of the one that stands across
   */
  public Decision<R> decide(Map<String, Trait> down, Map<String, Trait> across) {
    List<R> reasons = new ArrayList<>();
    Verdict known = Verdict.GOOD;
    for (Rule<R> rule : rules) {
      if (rule.match(down, across) == Match.YES) {
        reasons.add(rule.reason());
        known = known.stricter(rule.reason().verdict());
      }
    }
    if (reasons.isEmpty()) {
      return new Decision<>(Verdict.UNKNOWN, reasons, List.of());
    }
    List<String> missing = missing(known, down, across);
    return new Decision<>(
        missing.isEmpty() ? known : known.stricter(Verdict.UNKNOWN), reasons, missing);
  }

  /** Traits not written down that might make the verdict stricter than it is known to be. */
  private List<String> missing(Verdict known, Map<String, Trait> down, Map<String, Trait> across) {
    List<String> missing = new ArrayList<>();
    for (Rule<R> rule : rules) {
      boolean stricter = rule.reason().verdict().compareTo(known) > 0;
      if (stricter && rule.match(down, across) == Match.UNKNOWN) {
        missing.addAll(rule.missing(down, across));
      }
    }
    return missing.stream().distinct().toList();
  }
}
