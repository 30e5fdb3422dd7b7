package benchlore.schedules.coating;

import benchlore.schedules.material.FinishFamily;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Look-ups in the rows handed in. */
final class OverTable {
  private final List<OverRule> rules;

  OverTable(List<OverRule> rules) {
    this.rules = rules;
  }

  /** The strictest row of a pair; the longest wait among equals. */
  Optional<OverRule> strictest(FinishFamily upper, FinishFamily under) {
    OverRule strictest = null;
    for (OverRule rule : rules) {
      if (rule.upper() == upper && rule.under() == under) {
        strictest = strictest == null || stricter(rule, strictest) ? rule : strictest;
      }
    }
    return Optional.ofNullable(strictest);
  }

  /**
   * Families that hold on the under coat and carry the upper one, each without a barrier of its
   * own.
   */
  List<FinishFamily> barriers(FinishFamily upper, FinishFamily under) {
    List<FinishFamily> found = new ArrayList<>();
    for (FinishFamily family : FinishFamily.values()) {
      boolean between = family != upper && family != under;
      if (between && direct(upper, family) && direct(family, under)) {
        found.add(family);
      }
    }
    return found;
  }

  /** Whether a pair holds without anything between, by a row. */
  boolean direct(FinishFamily upper, FinishFamily under) {
    Optional<OverRule> rule = strictest(upper, under);
    return rule.isPresent() && rule.get().verdict().compareTo(OverRule.Verdict.SCUFFED) <= 0;
  }

  private static boolean stricter(OverRule rule, OverRule than) {
    int verdict = rule.verdict().compareTo(than.verdict());
    return verdict > 0 || (verdict == 0 && rule.waitUntil().compareTo(than.waitUntil()) > 0);
  }
}
