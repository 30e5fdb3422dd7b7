package benchlore.generator.site;

import benchlore.generator.compatibility.Table;
import benchlore.generator.compatibility.TableItem;
import benchlore.generator.compatibility.TableKind;
import benchlore.generator.content.LibraryRecord;
import benchlore.generator.page.Link;
import benchlore.generator.page.RecordModel;
import java.util.ArrayList;
import java.util.List;

/** What a record's page says of the tables it stands in, each with a link to its place there. */
final class TableLinks {
  private final List<Table> tables;

  TableLinks(List<Table> tables) {
    this.tables = List.copyOf(tables);
  }

  /** One place a table the record stands in. */
  List<RecordModel.TablePlace> places(LibraryRecord entry) {
    List<RecordModel.TablePlace> lines = new ArrayList<>();
    for (Table table : tables) {
      TableView rows = new TableView(table, false);
      add(lines, rows, entry);
      add(lines, rows.other(), entry);
    }
    return lines;
  }

  private static void add(List<RecordModel.TablePlace> lines, TableView view, LibraryRecord entry) {
    boolean listed = view.fromAxis().kind().filter(kind -> kind == entry.kind()).isPresent();
    if (!listed) {
      return;
    }
    for (TableItem thing : view.from()) {
      if (thing.id().equals(entry.id())) {
        lines.add(
            new RecordModel.TablePlace(
                new Link(view.url() + "#" + thing.id(), words(view)), view.counts(thing)));
      }
    }
  }

  private static String words(TableView view) {
    TableKind kind = view.table().kind();
    return view.turned() ? TableWords.of(kind).columnLink() : TableWords.of(kind).rowLink();
  }
}
