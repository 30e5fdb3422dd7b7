package benchlore.generator.page;

import java.util.List;

/**
 * The list of the planners.
 *
 * @param planners in the order people need them
 */
public record PlannersModel(List<Planner> planners) implements PageModel {
  /** Copies the list. */
  public PlannersModel {
    planners = List.copyOf(planners);
  }

  @Override
  public String template() {
    return "planners";
  }

  /**
   * A planner.
   *
   * @param name of the page and its template
   * @param title heading
   * @param lead what it answers
   */
  public record Planner(String name, String title, String lead) {
    /** Its page, from the folder of the planners. */
    public String url() {
      return name + ".html";
    }
  }
}
