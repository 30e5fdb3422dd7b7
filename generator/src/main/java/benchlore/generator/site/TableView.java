package benchlore.generator.site;

import benchlore.generator.compatibility.Axis;
import benchlore.generator.compatibility.Table;
import benchlore.generator.compatibility.TableItem;
import benchlore.generator.page.Link;
import benchlore.schedules.compatibility.Verdict;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * A table seen from one of its axes: what one looks up, and what is found there.
 *
 * @param table the table
 * @param turned false from its rows, true from its columns
 */
record TableView(Table table, boolean turned) {
  /** What one looks up. */
  List<TableItem> from() {
    return turned ? table.columns() : table.rows();
  }

  /** What is found there. */
  List<TableItem> to() {
    return turned ? table.rows() : table.columns();
  }

  Axis fromAxis() {
    return turned ? table.kind().column() : table.kind().row();
  }

  Table.Cell cell(TableItem from, TableItem to) {
    return turned ? table.cell(to, from) : table.cell(from, to);
  }

  TableView other() {
    return new TableView(table, !turned);
  }

  String url() {
    return "tables/" + (turned ? table.kind().turned() : table.kind().file()) + ".html";
  }

  String title() {
    TableWords words = TableWords.of(table.kind());
    return turned ? words.turnedTitle() : words.title();
  }

  String lead() {
    TableWords words = TableWords.of(table.kind());
    return turned ? words.turnedLead() : words.lead();
  }

  /** Its page. */
  Link link() {
    return new Link(url(), title());
  }

  /** How many of each verdict one thing has: "12 good, 11 with care, 3 don't". */
  String counts(TableItem from) {
    Map<Verdict, Integer> counts = new EnumMap<>(Verdict.class);
    for (TableItem to : to()) {
      counts.merge(cell(from, to).verdict(), 1, Integer::sum);
    }
    List<String> words = new ArrayList<>();
    counts.forEach(
        (verdict, count) ->
            words.add(count + " " + table.kind().word(verdict).toLowerCase(Locale.ROOT)));
    return String.join(", ", words);
  }
}
