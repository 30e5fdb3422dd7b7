package benchlore.generator.site;

import benchlore.generator.compatibility.Table;
import benchlore.generator.compatibility.TableItem;
import benchlore.schedules.compatibility.Verdict;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** A compatibility table at one glance, for a wide screen or paper: the longer axis runs down. */
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

  /** Values for the template {@code table-whole}. */
  Map<String, Object> values() {
    Map<String, Object> values = new HashMap<>();
    values.put("root", "../");
    values.put("title", TableWords.of(down.table().kind()).title());
    values.put("one", down.fromAxis().one());
    values.put("columns", down.to());
    values.put("down", down.link());
    values.put("across", down.other().link());
    values.put("rows", down.from().stream().map(this::row).toList());
    values.put("key", key());
    return values;
  }

  private Map<String, Object> row(TableItem thing) {
    List<Map<String, String>> cells = new ArrayList<>();
    for (TableItem to : down.to()) {
      cells.add(cell(down.cell(thing, to).verdict()));
    }
    return Map.of("thing", thing, "cells", cells);
  }

  private Map<String, String> cell(Verdict verdict) {
    return Map.of(
        "css", TableWords.css(verdict),
        "symbol", TableWords.symbol(verdict),
        "word", TableWords.brief(down.table().kind(), verdict),
        "full", down.table().kind().word(verdict));
  }

  private List<Map<String, String>> key() {
    List<Map<String, String>> key = new ArrayList<>();
    for (Verdict verdict : Verdict.values()) {
      key.add(cell(verdict));
    }
    return key;
  }
}
