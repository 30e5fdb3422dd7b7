package benchlore.schedules.compatibility;

import benchlore.schedules.compatibility.Condition.Match;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * One row of a table's rules: where its conditions are met, its reason holds.
 *
 * @param row conditions on what stands down, by trait
 * @param column conditions on what stands across, by trait
 * @param reason verdict and why
 * @param <R> what the rules of this table say besides
 */
public record Rule<R extends Reason>(
    Map<String, Condition> row, Map<String, Condition> column, R reason) {
  /** Copies the maps; refuses a rule without a reason. */
  public Rule {
    row = Map.copyOf(row);
    column = Map.copyOf(column);
    if (reason == null) {
      throw new NullPointerException("reason");
    }
  }

  Match match(Map<String, Trait> down, Map<String, Trait> across) {
    return all(row, down).and(all(column, across));
  }

  /** Traits this rule asks for that are not written down. */
  List<String> missing(Map<String, Trait> down, Map<String, Trait> across) {
    List<String> missing = new ArrayList<>(absent(row, down));
    missing.addAll(absent(column, across));
    return missing;
  }

  private static Match all(Map<String, Condition> conditions, Map<String, Trait> traits) {
    Match match = Match.YES;
    for (Map.Entry<String, Condition> condition : conditions.entrySet()) {
      Trait trait = traits.get(condition.getKey());
      boolean met = trait != null && condition.getValue().met(trait);
      Match one = trait == null ? Match.UNKNOWN : met ? Match.YES : Match.NO;
      match = match.and(one);
    }
    return match;
  }

  private static List<String> absent(Map<String, Condition> conditions, Map<String, Trait> traits) {
    return conditions.keySet().stream().filter(key -> !traits.containsKey(key)).sorted().toList();
  }
}
