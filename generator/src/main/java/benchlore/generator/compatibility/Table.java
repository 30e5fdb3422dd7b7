package benchlore.generator.compatibility;

import benchlore.generator.content.Facts;
import benchlore.generator.content.Library;
import benchlore.generator.content.Problem;
import benchlore.schedules.compatibility.Decision;
import benchlore.schedules.compatibility.Rule;
import benchlore.schedules.compatibility.Rules;
import benchlore.schedules.compatibility.Trait;
import benchlore.schedules.compatibility.Verdict;
import benchlore.schedules.quantity.SourcedRange;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One compatibility table.
 *
 * <p>The strictest rule that applies decides a cell, and every rule that applies gives its reason.
 * Where a stricter rule would ask for a fact that is not written down, or no rule applies at all,
 * the cell says so and sends the reader to a piece of scrap; nothing is guessed.
 */
public final class Table {
  /**
   * Why a cell is as it is.
   *
   * @param verdict what this reason alone would give
   * @param why a plain sentence; {@code {limit}} stands for the limit
   * @param limit the figure the rule compares with, if it does
   * @param from {@code source}, {@code common-practice}, {@code from-memory}, or empty where
   *     nothing is claimed
   * @param source id of the source record, or empty
   * @param where place in it, or empty
   */
  public record Reason(
      Verdict verdict,
      String why,
      Optional<SourcedRange> limit,
      String from,
      String source,
      String where)
      implements benchlore.schedules.compatibility.Reason {}

  /**
   * One pair decided.
   *
   * @param verdict the strictest of the reasons
   * @param reasons every one, strictest first; never empty
   */
  public record Cell(Verdict verdict, List<Reason> reasons) {
    /** Copies the list; refuses a cell nobody could explain. */
    public Cell {
      reasons = List.copyOf(reasons);
      if (reasons.isEmpty()) {
        throw new IllegalArgumentException("reasons must not be empty");
      }
    }
  }

  private static final String LIMIT = "{limit}";

  private final TableKind kind;
  private final List<TableItem> rows;
  private final List<TableItem> columns;
  private final Rules<Reason> rules;
  private final Map<String, Map<String, Cell>> cells = new HashMap<>();

  private Table(
      TableKind kind, List<TableItem> rows, List<TableItem> columns, Rules<Reason> rules) {
    this.kind = kind;
    this.rows = rows;
    this.columns = columns;
    this.rules = rules;
    Map<String, Map<String, Trait>> across = new HashMap<>();
    columns.forEach(column -> across.put(column.id(), column.traits()));
    for (TableItem row : rows) {
      Map<String, Cell> decided = new HashMap<>();
      Map<String, Trait> down = row.traits();
      across.forEach((column, traits) -> decided.put(column, cell(rules.decide(down, traits))));
      cells.put(row.id(), decided);
    }
  }

  /**
   * Makes a table from its checked file.
   *
   * @param kind which
   * @param file the file's facts
   * @param library the records it is about
   */
  public static Table of(TableKind kind, Facts file, Library library) {
    return new Table(
        kind,
        kind.row().things(file, library),
        kind.column().things(file, library),
        new Rules<>(file.groups("rows").stream().map(row -> RuleRows.rule(row, kind)).toList()));
  }

  /** What no schema can see in a file: a sentence that speaks of a limit where there is none. */
  public static List<Problem> problems(TableKind kind, Facts file) {
    List<Problem> problems = new ArrayList<>();
    for (Facts row : file.groups("rows")) {
      boolean speaks = row.words("why").contains(LIMIT);
      if (speaks && RuleRows.rule(row, kind).reason().limit().isEmpty()) {
        problems.add(
            row.spot("why")
                .problem(
                    "the sentence speaks of `" + LIMIT + "` and the row sets none",
                    "Add `at-least` or `at-most` to a condition, or write the sentence without."));
      }
    }
    return problems;
  }

  /** Which table. */
  public TableKind kind() {
    return kind;
  }

  /** What stands down. */
  public List<TableItem> rows() {
    return rows;
  }

  /** What stands across. */
  public List<TableItem> columns() {
    return columns;
  }

  /** Every reason a rule of the file may give, in the order written. */
  public List<Reason> reasons() {
    return rules.rules().stream().map(Rule::reason).toList();
  }

  /**
   * One pair, decided.
   *
   * @param row one of {@link #rows}
   * @param column one of {@link #columns}
   */
  public Cell cell(TableItem row, TableItem column) {
    return cells.get(row.id()).get(column.id());
  }

  private static Cell cell(Decision<Reason> decision) {
    if (decision.reasons().isEmpty()) {
      return new Cell(Verdict.UNKNOWN, List.of(open("No rule covers this pair: try on scrap.")));
    }
    List<Reason> all = new ArrayList<>(decision.reasons());
    for (String fact : decision.missing()) {
      all.add(open("Not known: its " + fact.replace('-', ' ') + ". Try on scrap."));
    }
    all.sort(Comparator.comparing(Reason::verdict).reversed());
    return new Cell(decision.verdict(), all);
  }

  private static Reason open(String why) {
    return new Reason(Verdict.UNKNOWN, why, Optional.empty(), "", "", "");
  }
}
