package benchlore.generator.site;

import benchlore.generator.compatibility.Table;
import benchlore.generator.compatibility.TableItem;
import benchlore.generator.content.Library;
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

/** A compatibility table as a list to open: one thing at a time, with every reason. */
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
  static List<Map<String, String>> cards(List<Table> tables) {
    List<Map<String, String>> cards = new ArrayList<>();
    for (Table table : tables) {
      TableView view = new TableView(table, false);
      cards.add(
          Map.of(
              "title", view.title(),
              "url", view.url(),
              "turnedTitle", view.other().title(),
              "turnedUrl", view.other().url(),
              "wholeUrl", TableWholePage.url(table),
              "short", table.rows().size() * table.columns().size() + " pairs, each explained"));
    }
    return cards;
  }

  /** How many rules decide the tables, and how many rest on what: by {@code from}, and all. */
  static Map<String, Long> rules(List<Table> tables) {
    Map<String, Long> counts = new HashMap<>(Map.of("all", 0L));
    for (String from : List.of("source", "common-practice", "from-memory")) {
      long count =
          tables.stream()
              .flatMap(table -> table.reasons().stream())
              .filter(reason -> reason.from().equals(from))
              .count();
      counts.put(from.replace("-", ""), count);
      counts.merge("all", count, Long::sum);
    }
    return counts;
  }

  String url() {
    return view.url();
  }

  /** Values for the template {@code table}. */
  Map<String, Object> values() {
    Map<String, Object> values = new HashMap<>();
    values.put("root", ROOT);
    values.put("title", view.title());
    values.put("lead", view.lead());
    values.put("other", view.other().link());
    values.put("whole", TableWholePage.url(view.table()));
    values.put("parts", parts());
    return values;
  }

  /** The things by first letter where there are many, else all in one part without a letter. */
  private List<Map<String, Object>> parts() {
    Map<String, List<Map<String, Object>>> parts = new LinkedHashMap<>();
    boolean letters = view.from().size() > MOST_WITHOUT_LETTERS;
    for (TableItem thing : view.from()) {
      String letter = letters ? thing.title().substring(0, 1).toUpperCase(Locale.ROOT) : "";
      parts.computeIfAbsent(letter, l -> new ArrayList<>()).add(section(thing));
    }
    List<Map<String, Object>> list = new ArrayList<>();
    parts.forEach((letter, things) -> list.add(Map.of("letter", letter, "things", things)));
    return list;
  }

  private Map<String, Object> section(TableItem thing) {
    List<Table.Reason> common = common(thing);
    Map<Verdict, Map<TableItem, Table.Cell>> byVerdict = new EnumMap<>(Verdict.class);
    for (TableItem to : view.to()) {
      Table.Cell cell = view.cell(thing, to);
      byVerdict.computeIfAbsent(cell.verdict(), v -> new LinkedHashMap<>()).put(to, cell);
    }
    List<Map<String, Object>> verdicts = new ArrayList<>();
    byVerdict.forEach(
        (verdict, cells) -> verdicts.add(verdict(verdict, TableGroups.of(cells, common))));
    return Map.of(
        "thing", thing,
        "means", markdown.line(thing.means()),
        "counts", view.counts(thing),
        "common", html(common),
        "verdicts", verdicts);
  }

  private Map<String, Object> verdict(Verdict verdict, TableGroups groups) {
    return Map.of(
        "css", TableWords.css(verdict),
        "symbol", TableWords.symbol(verdict),
        "word", view.table().kind().word(verdict),
        "shared", groups.shared().stream().map(this::shared).toList(),
        "groups", groups.groups().stream().map(this::group).toList());
  }

  private String shared(TableGroups.Shared shared) {
    String but = String.join(", ", shared.but().stream().map(TableItem::title).toList());
    String whom = but.isEmpty() ? "All of these" : "All but " + Display.escape(but);
    return "<b>" + whom + ":</b> " + html(List.of(shared.reason()));
  }

  private Map<String, Object> group(TableGroups.Group group) {
    return Map.of("why", html(group.reasons()), "things", group.things());
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
