package benchlore.generator.page;

import java.util.List;

/**
 * The list of the tables.
 *
 * @param tables one a compatibility table
 * @param rules what the tables rest on
 */
public record TablesModel(List<Card> tables, Rules rules) implements PageModel {
  /** Copies the list. */
  public TablesModel {
    tables = List.copyOf(tables);
  }

  @Override
  public String template() {
    return "tables";
  }

  /**
   * A table in a list.
   *
   * @param link its page, from its rows
   * @param turned its page, from its columns
   * @param whole page of the whole table, from the site's root
   * @param pairs how many there are, in words
   */
  public record Card(Link link, Link turned, String whole, String pairs) {}

  /**
   * How many rules rest on what.
   *
   * @param published on a source
   * @param practice on common practice
   * @param memory on memory
   */
  public record Rules(long published, long practice, long memory) {
    /** All of them. */
    public long all() {
      return published + practice + memory;
    }
  }
}
