package benchlore.generator.page;

import benchlore.generator.compatibility.TableItem;
import java.util.List;

/**
 * A compatibility table at one glance, for a wide screen or paper.
 *
 * @param title heading
 * @param one what runs down, in a word
 * @param columns what runs across
 * @param down the list of what runs down
 * @param across the list of what runs across
 * @param rows one a thing that runs down
 * @param key every verdict
 */
public record TableWholeModel(
    String title,
    String one,
    List<TableItem> columns,
    Link down,
    Link across,
    List<Row> rows,
    List<Cell> key)
    implements PageModel {
  /** Copies the lists. */
  public TableWholeModel {
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
    key = List.copyOf(key);
  }

  @Override
  public String template() {
    return "table-whole";
  }

  /**
   * A row.
   *
   * @param thing which
   * @param cells one a column
   */
  public record Row(TableItem thing, List<Cell> cells) {
    /** Copies the list. */
    public Row {
      cells = List.copyOf(cells);
    }
  }

  /**
   * A verdict, small.
   *
   * @param css its name in style sheets
   * @param symbol a mark that needs no colour
   * @param word short enough for a cell
   * @param full in full
   */
  public record Cell(String css, String symbol, String word, String full) {}
}
