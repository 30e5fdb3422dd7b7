package benchlore.schedules.coating;

import benchlore.schedules.quantity.SourcedRange;
import java.util.List;

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
    if (glossUnits == null) {
      throw new NullPointerException("glossUnits");
    }
    if (ways.isEmpty()) {
      throw new IllegalArgumentException("ways must not be empty");
    }
  }
}
