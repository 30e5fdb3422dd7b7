package benchlore.schedules.compatibility;

import benchlore.schedules.material.FinishFamily;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A row of what may go over what, as it is written.
 *
 * @param upper the families to put on
 * @param under the families already there
 * @param reason what the row says of them
 */
public record OverRow(List<FinishFamily> upper, List<FinishFamily> under, OverReason reason) {
  /** Copies the lists; refuses nulls. */
  public OverRow {
    upper = List.copyOf(upper);
    under = List.copyOf(under);
    Objects.requireNonNull(reason, "reason");
  }

  /** The rules that rows make. */
  public static Rules<OverReason> rules(List<OverRow> rows) {
    List<Rule<OverReason>> rules = new ArrayList<>();
    for (OverRow row : rows) {
      rules.add(row.reason().on(row.upper(), row.under()));
    }
    return new Rules<>(rules);
  }
}
