package benchlore.generator.page;

import java.util.List;

/**
 * The list of the plans worked out.
 *
 * @param plans one a plan
 */
public record PlansModel(List<Card> plans) implements PageModel {
  /** Copies the list. */
  public PlansModel {
    plans = List.copyOf(plans);
  }

  @Override
  public String template() {
    return "plans";
  }

  /**
   * A plan in a list.
   *
   * @param link its page and title
   * @param gist HTML: when it ends, how much work it is
   */
  public record Card(Link link, String gist) {}
}
