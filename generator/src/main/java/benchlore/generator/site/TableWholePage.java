package benchlore.generator.site;

import benchlore.generator.compatibility.Table;
import benchlore.generator.compatibility.TableItem;
import benchlore.generator.page.TableWholeModel;
import benchlore.schedules.compatibility.Verdict;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Fills the page of a whole table, for a wide screen or paper: the longer axis runs down. */
final class TableWholePage {
  private final TableView down;

  TableWholePage(Table table) {
    this.down = new TableView(table, table.columns().size() > table.rows().size());
  }

  static String url(Table table) {
    return "tables/" + table.kind().file() + "-whole.html";
  }

  String url() {
    return url(down.table());
  }

  TableWholeModel model() {
    return new TableWholeModel(
        TableWords.of(down.table().kind()).title(),
        down.fromAxis().one(),
        down.to(),
        down.link(),
        down.other().link(),
        down.from().stream().map(this::row).toList(),
        Arrays.stream(Verdict.values()).map(this::cell).toList());
  }

  private TableWholeModel.Row row(TableItem thing) {
    List<TableWholeModel.Cell> cells = new ArrayList<>();
    for (TableItem to : down.to()) {
      cells.add(cell(down.cell(thing, to).verdict()));
    }
    return new TableWholeModel.Row(thing, cells);
  }

  private TableWholeModel.Cell cell(Verdict verdict) {
    return new TableWholeModel.Cell(
        TableWords.css(verdict),
        TableWords.symbol(verdict),
        TableWords.brief(down.table().kind(), verdict),
        down.table().kind().word(verdict));
  }
}
