package benchlore.generator.page;

import java.util.List;

/**
 * Every sheen on one page.
 *
 * @param levels dullest first
 */
public record SheensModel(List<Level> levels) implements PageModel {
  /** Where the page stands, from the site's root. */
  public static final String URL = "tables/sheens.html";

  /** Copies the list. */
  public SheensModel {
    levels = List.copyOf(levels);
  }

  @Override
  public String template() {
    return "sheens";
  }

  /**
   * A sheen.
   *
   * @param link its record's page and title
   * @param svg a window mirrored in it
   * @param gloss HTML: its reading at 60 degrees
   * @param reflection HTML: what a window looks like in it
   * @param made what makes it
   * @param paper the last paper where it is rubbed; empty where it is not
   */
  public record Level(
      Link link, String svg, String gloss, String reflection, String made, String paper) {}
}
