package benchlore.schedules.coating;

import benchlore.schedules.quantity.ComponentException;
import benchlore.schedules.quantity.SourcedRange;
import java.util.List;
import java.util.Objects;

/**
 * Every way to the sheen wanted, the least work first.
 *
 * @param ways at least one
 * @param glossUnits what the sheen wanted reads at 60 degrees
 */
public record SheenPlan(List<SheenWay> ways, SourcedRange glossUnits) {
  /** Copies the list; refuses an empty one. */
  public SheenPlan {
    ways = List.copyOf(ways);
    Objects.requireNonNull(glossUnits, "glossUnits");
    if (ways.isEmpty()) {
      throw new ComponentException("ways", "must not be empty");
    }
  }
}
