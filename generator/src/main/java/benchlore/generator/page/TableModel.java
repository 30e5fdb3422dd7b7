package benchlore.generator.page;

import benchlore.generator.compatibility.TableItem;
import java.util.List;

/**
 * A compatibility table as a list to open: one thing at a time, with every reason.
 *
 * @param title heading
 * @param lead what to do here
 * @param other the same table from its other side
 * @param whole page of the whole table, from the site's root
 * @param parts the things
 */
public record TableModel(String title, String lead, Link other, String whole, List<Part> parts)
    implements PageModel {
  /** Copies the list. */
  public TableModel {
    parts = List.copyOf(parts);
  }

  @Override
  public String template() {
    return "table";
  }

  /**
   * The things of one first letter.
   *
   * @param letter empty where the list is short and all stand in one part
   * @param things which
   */
  public record Part(String letter, List<Section> things) {
    /** Copies the list. */
    public Part {
      things = List.copyOf(things);
    }
  }

  /**
   * A thing to open.
   *
   * @param thing which
   * @param means HTML: what it is
   * @param counts how many of each verdict it has
   * @param common HTML: what holds whatever one takes; empty where nothing does
   * @param verdicts what goes with it and what doesn't, by verdict
   */
  public record Section(
      TableItem thing, String means, String counts, String common, List<Sorted> verdicts) {
    /** Copies the list. */
    public Section {
      verdicts = List.copyOf(verdicts);
    }
  }

  /**
   * What has one verdict.
   *
   * @param css the verdict's name in style sheets
   * @param symbol a mark that needs no colour
   * @param word the verdict
   * @param shared HTML: reasons of nearly all of them, a line each
   * @param groups which, by the rest of their reasons
   */
  public record Sorted(
      String css, String symbol, String word, List<String> shared, List<Group> groups) {
    /** Copies the lists. */
    public Sorted {
      shared = List.copyOf(shared);
      groups = List.copyOf(groups);
    }
  }

  /**
   * Things with the same reasons.
   *
   * @param why HTML: those besides the shared ones; empty where the shared ones are all
   * @param things which
   */
  public record Group(String why, List<TableItem> things) {
    /** Copies the list. */
    public Group {
      things = List.copyOf(things);
    }
  }
}
