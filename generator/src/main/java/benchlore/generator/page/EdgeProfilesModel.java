package benchlore.generator.page;

import benchlore.generator.content.LibraryRecord;
import java.util.List;

/**
 * Every edge profile at one scale.
 *
 * @param edges which
 */
public record EdgeProfilesModel(List<Edge> edges) implements PageModel {
  /** Where the page stands, from the site's root. */
  public static final String URL = "tables/edge-profiles.html";

  /** Copies the list. */
  public EdgeProfilesModel {
    edges = List.copyOf(edges);
  }

  @Override
  public String template() {
    return "edge-profiles";
  }

  /**
   * An edge profile.
   *
   * @param title what it is called
   * @param also its other names, with commas between
   * @param svg its drawing
   * @param size HTML: what it is drawn from
   * @param cutBy records of what cuts it
   * @param where it is used
   * @param wears how it wears
   */
  public record Edge(
      String title,
      String also,
      String svg,
      String size,
      List<LibraryRecord> cutBy,
      String where,
      String wears) {
    /** Copies the list. */
    public Edge {
      cutBy = List.copyOf(cutBy);
    }
  }
}
