package benchlore.schedules.coating;

import benchlore.schedules.material.Finish;
import java.util.List;

/**
 * What may go over what.
 *
 * @param upper the finish to put on
 * @param under the coat already there, and when and where it was put on
 * @param rules the table's rows; several for one pair are allowed, the strictest decides
 */
public record CompatibilityRequest(Finish upper, DryingRequest under, List<OverRule> rules) {
  /** Copies the list; refuses nulls. */
  public CompatibilityRequest {
    if (upper == null || under == null) {
      throw new NullPointerException("upper and under");
    }
    rules = List.copyOf(rules);
  }
}
