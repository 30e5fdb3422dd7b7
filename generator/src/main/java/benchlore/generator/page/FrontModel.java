package benchlore.generator.page;

import benchlore.generator.content.Kind;
import java.util.List;

/**
 * The front page.
 *
 * @param planners none where the site has no shop
 * @param plans those worked out
 * @param tables one a compatibility table
 * @param kinds every kind of record
 */
public record FrontModel(
    List<PlannersModel.Planner> planners,
    List<PlansModel.Card> plans,
    List<TablesModel.Card> tables,
    List<Shelf> kinds)
    implements PageModel {
  /** Copies the lists. */
  public FrontModel {
    planners = List.copyOf(planners);
    plans = List.copyOf(plans);
    tables = List.copyOf(tables);
    kinds = List.copyOf(kinds);
  }

  @Override
  public String template() {
    return "front";
  }

  /**
   * A kind of record.
   *
   * @param kind which
   * @param count how many records there are
   */
  public record Shelf(Kind kind, int count) {}
}
