package benchlore.generator.site;

import benchlore.generator.compatibility.Table;
import benchlore.generator.compatibility.TableItem;
import benchlore.generator.content.Library;
import benchlore.generator.page.TableModel;
import benchlore.generator.page.TablesModel;
import benchlore.generator.units.Display;
import benchlore.schedules.compatibility.Verdict;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Fills the page of a table as a list to open: one thing at a time, with every reason. */
final class TablePage {
  private static final String ROOT = "../";

  /** Above this many things the list has letters to jump to. */
  private static final int MOST_WITHOUT_LETTERS = 30;

  private final TableView view;
  private final Markdown markdown;
  private final Map<Table.Reason, String> rendered = new HashMap<>();

  private TablePage(Library library, TableView view) {
    this.view = view;
    this.markdown = new Markdown(library, ROOT);
  }

  /** Both pages of a table: by its rows and by its columns. */
  static List<TablePage> both(Library library, Table table) {
    TableView rows = new TableView(table, false);
    return List.of(new TablePage(library, rows), new TablePage(library, rows.other()));
  }

  /** One card a table, for the list of tables and the front page. */
  static List<TablesModel.Card> cards(List<Table> tables) {
    List<TablesModel.Card> cards = new ArrayList<>();
    for (Table table : tables) {
      TableView view = new TableView(table, false);
      cards.add(
          new TablesModel.Card(
              view.link(),
              view.other().link(),
              TableWholePage.url(table),
              table.rows().size() * table.columns().size() + " pairs, each explained"));
    }
    return cards;
  }

  /** How many rules decide the tables, and how many rest on what. */
  static TablesModel.Rules rules(List<Table> tables) {
    return new TablesModel.Rules(
        count(tables, "source"), count(tables, "common-practice"), count(tables, "from-memory"));
  }

  private static long count(List<Table> tables, String from) {
    return tables.stream()
        .flatMap(table -> table.reasons().stream())
        .filter(reason -> reason.from().equals(from))
        .count();
  }

  String url() {
    return view.url();
  }

  TableModel model() {
    return new TableModel(
        view.title(), view.lead(), view.other().link(), TableWholePage.url(view.table()), parts());
  }

  /** The things by first letter where there are many, else all in one part without a letter. */
  private List<TableModel.Part> parts() {
    Map<String, List<TableModel.Section>> parts = new LinkedHashMap<>();
    boolean letters = view.from().size() > MOST_WITHOUT_LETTERS;
    for (TableItem thing : view.from()) {
      String letter = letters ? thing.title().substring(0, 1).toUpperCase(Locale.ROOT) : "";
      parts.computeIfAbsent(letter, l -> new ArrayList<>()).add(section(thing));
    }
    List<TableModel.Part> list = new ArrayList<>();
    parts.forEach((letter, things) -> list.add(new TableModel.Part(letter, things)));
    return list;
  }

  private TableModel.Section section(TableItem thing) {
    List<Table.Reason> common = common(thing);
    Map<Verdict, Map<TableItem, Table.Cell>> byVerdict = new EnumMap<>(Verdict.class);
    for (TableItem to : view.to()) {
      Table.Cell cell = view.cell(thing, to);
      byVerdict.computeIfAbsent(cell.verdict(), v -> new LinkedHashMap<>()).put(to, cell);
    }
    List<TableModel.Sorted> verdicts = new ArrayList<>();
    byVerdict.forEach(
        (verdict, cells) -> verdicts.add(verdict(verdict, TableGroups.of(cells, common))));
    return new TableModel.Section(
        thing, markdown.line(thing.means()), view.counts(thing), html(common), verdicts);
  }

  private TableModel.Sorted verdict(Verdict verdict, TableGroups groups) {
    return new TableModel.Sorted(
        TableWords.css(verdict),
        TableWords.symbol(verdict),
        view.table().kind().word(verdict),
        groups.shared().stream().map(this::shared).toList(),
        groups.groups().stream().map(this::group).toList());
  }

  private String shared(TableGroups.Shared shared) {
    String but = String.join(", ", shared.but().stream().map(TableItem::title).toList());
    String whom = but.isEmpty() ? "All of these" : "All but " + Display.escape(but);
    return "<b>" + whom + ":</b> " + html(List.of(shared.reason()));
  }

  private TableModel.Group group(TableGroups.Group group) {
    return new TableModel.Group(html(group.reasons()), group.things());
  }

  /** Kind reasons that hold whatever one takes are read once, above the groups. */
  private List<Table.Reason> common(TableItem thing) {
    List<Table.Reason> common = null;
    for (TableItem to : view.to()) {
      List<Table.Reason> reasons = view.cell(thing, to).reasons();
      if (common == null) {
        common = new ArrayList<>(reasons);
      }
      common.retainAll(reasons);
    }
    if (common == null || view.to().size() < 2) {
      return List.of();
    }
    common.removeIf(reason -> reason.verdict() != Verdict.GOOD);
    return common;
  }

  private String html(List<Table.Reason> reasons) {
    return String.join(" ", reasons.stream().map(this::html).toList());
  }

  private String html(Table.Reason reason) {
    return rendered.computeIfAbsent(
        reason,
        r -> {
          String text = markdown.line(r.why());
          String limit = r.limit().map(TablePage::limit).orElse("");
          return text.replace("{limit}", limit) + mark(r);
        });
  }

  /** A bare ratio has no units to switch, so it needs no more than its digits. */
  private static String limit(SourcedRange limit) {
    return limit.unit() == Unit.RATIO ? Display.number(limit.low()) : Display.html(limit);
  }

  private static String mark(Table.Reason reason) {
    return switch (reason.from()) {
      case "source" ->
          " <a class=\"mark\" href=\"" + ROOT + "sources.html#" + reason.source() + "\">source</a>";
      case "from-memory" -> " <span class=\"mark\">from memory</span>";
      default -> "";
    };
  }
}
