package benchlore.generator.planning;

import benchlore.generator.compatibility.Table;
import benchlore.generator.compatibility.TableItem;
import benchlore.generator.compatibility.TableKind;
import benchlore.generator.content.Kind;
import benchlore.generator.content.Library;
import benchlore.generator.content.LibraryRecord;
import benchlore.schedules.answer.Message;
import benchlore.schedules.compatibility.OverRow;
import benchlore.schedules.compatibility.Verdict;
import benchlore.schedules.material.Finish;
import benchlore.schedules.material.FinishFamily;
import benchlore.schedules.material.FinishRole;
import benchlore.schedules.movement.PlaceClimate;
import benchlore.schedules.project.Pairing;
import benchlore.schedules.project.Suits;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.quantity.SourcedRange;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the tables of a content folder say of a plan: the cells its records stand in, as the pages
 * of the tables show them. The command line asks it a plan at a time; a page carries what it says
 * of every record.
 */
public final class PlanSuits {
  private static final int MOST_INSTEAD = 3;
  private static final Pattern LINK = Pattern.compile("\\[\\[([a-z0-9-]+)(?:\\|([^\\]]+))?]]");

  private final Library library;
  private final List<Table> tables;
  private final List<OverRow> over;

  /**
   * What these tables say.
   *
   * @param library the records they are about
   * @param tables as many as there are; of one that is not there, nothing is said
   * @param over rows of what may go over what
   */
  public PlanSuits(Library library, List<Table> tables, List<OverRow> over) {
    this.library = library;
    this.tables = List.copyOf(tables);
    this.over = List.copyOf(over);
  }

  /** What they say of a plan's records, all of them in the library. */
  Suits suits(String species, String adhesive, List<String> finishes, PlaceClimate place) {
    List<Pairing> glue = new ArrayList<>();
    inUse(adhesive, place).ifPresent(glue::add);
    onWood(adhesive, species).ifPresent(glue::add);
    List<Pairing> at = new ArrayList<>();
    finishes.forEach(finish -> atPlace(finish, place).ifPresent(at::add));
    return new Suits(glue, at, over, barriers());
  }

  /** A finish where the parts will live; empty where there is no such table. */
  public Optional<Pairing> atPlace(String finish, PlaceClimate place) {
    return decided(
            Pairing.Subject.FINISH_AT_PLACE,
            TableKind.FINISH_BY_PLACE,
            finish,
            TablePlaces.of(place))
        .map(cell -> pairing(cell, TablePlaces.words(place)));
  }

  /** An adhesive where the parts will live; empty where there is no such table. */
  public Optional<Pairing> inUse(String adhesive, PlaceClimate place) {
    return decided(
            Pairing.Subject.ADHESIVE_IN_USE,
            TableKind.ADHESIVE_BY_USE,
            adhesive,
            TablePlaces.of(place))
        .map(cell -> pairing(cell, TablePlaces.words(place)));
  }

  /** An adhesive on a wood; empty where there is no such table. */
  public Optional<Pairing> onWood(String adhesive, String species) {
    String wood = library.find(Kind.SPECIES, species).map(PlanSuits::lower).orElse(species);
    return decided(
            Pairing.Subject.ADHESIVE_ON_WOOD,
            TableKind.ADHESIVE_BY_SPECIES,
            adhesive,
            List.of(species))
        .map(cell -> pairing(cell, "on " + wood));
  }

  /** A finish of each family, to be named where one is wanted between two others. */
  public List<Suits.Barrier> barriers() {
    List<Suits.Barrier> barriers = new ArrayList<>();
    Set<FinishFamily> named = EnumSet.noneOf(FinishFamily.class);
    for (LibraryRecord entry : library.of(Kind.FINISHES)) {
      Optional<Finish> finish = EngineData.finish(entry);
      if (finish.isPresent() && named.add(finish.get().family())) {
        barriers.add(new Suits.Barrier(finish.get().family(), entry.title()));
      }
    }
    return barriers;
  }

  /**
   * One record decided in some rows of a table.
   *
   * @param subject what is paired
   * @param table where
   * @param column which record
   * @param rows in which rows
   */
  private record Decided(
      Pairing.Subject subject, Table table, TableItem column, List<TableItem> rows) {}

  private Optional<Decided> decided(
      Pairing.Subject subject, TableKind kind, String column, List<String> rows) {
    return tables.stream()
        .filter(table -> table.kind() == kind)
        .findFirst()
        .flatMap(
            table ->
                item(table.columns(), column)
                    .map(
                        thing -> {
                          List<TableItem> asked =
                              rows.stream().flatMap(r -> item(table.rows(), r).stream()).toList();
                          return new Decided(subject, table, thing, asked);
                        }));
  }

  private static Optional<TableItem> item(List<TableItem> items, String id) {
    return items.stream().filter(item -> item.id().equals(id)).findFirst();
  }

  /** The rows from the kindest to the strictest on a record. */
  private static List<TableItem> byVerdict(Table table, TableItem column, List<TableItem> rows) {
    return rows.stream()
        .sorted(Comparator.comparing(r -> table.cell(r, column).verdict()))
        .toList();
  }

  /** The kindest row decides; what is good in one and not in another is to be minded. */
  private static Verdict verdict(Table table, TableItem column, List<TableItem> rows) {
    List<TableItem> ordered = byVerdict(table, column, rows);
    Verdict kindest = table.cell(ordered.get(0), column).verdict();
    Verdict strictest = table.cell(ordered.get(ordered.size() - 1), column).verdict();
    boolean disagree = kindest == Verdict.GOOD && strictest != Verdict.GOOD;
    return disagree ? Verdict.CARE : kindest;
  }

  private Pairing pairing(Decided decided, String where) {
    Table table = decided.table();
    List<TableItem> ordered = byVerdict(table, decided.column(), decided.rows());
    Table.Cell kindest = table.cell(ordered.get(0), decided.column());
    TableItem strict = ordered.get(ordered.size() - 1);
    Verdict verdict = verdict(table, decided.column(), decided.rows());
    boolean disagree = kindest.verdict() != verdict;
    boolean no = verdict == Verdict.NO;
    String before =
        disagree
            ? "where it is as damp as " + strict.title().toLowerCase(Locale.ENGLISH) + ": "
            : "";
    List<Message> why =
        (disagree ? table.cell(strict, decided.column()) : kindest)
            .reasons().stream()
                .filter(reason -> verdict != Verdict.GOOD && reason.verdict() != Verdict.GOOD)
                .filter(reason -> !no || reason.verdict() == Verdict.NO)
                .map(reason -> told(before, reason))
                .toList();
    String comma = decided.subject() == Pairing.Subject.ADHESIVE_ON_WOOD ? " " : ", ";
    return new Pairing(
        decided.subject(),
        decided.column().title() + comma + where,
        verdict,
        why,
        no ? instead(decided) : List.of());
  }

  /** A row's words with its limit as a quantity and what it links to by name. */
  private Message told(String before, Table.Reason reason) {
    Matcher link = LINK.matcher(reason.why());
    String words =
        before
            + link.replaceAll(
                found ->
                    Matcher.quoteReplacement(
                        Optional.ofNullable(found.group(2))
                            .orElseGet(() -> named(found.group(1)))));
    boolean limited = words.contains("{limit}");
    SourcedRange limit = reason.limit().orElse(null);
    return limited
        ? Message.of(words.replace("{limit}", "{0}"), Quantity.of(limit.low(), limit.unit()))
        : Message.of(words);
  }

  private String named(String id) {
    return library.find(id).map(PlanSuits::lower).orElse(id);
  }

  private static String lower(LibraryRecord entry) {
    return entry.title().toLowerCase(Locale.ENGLISH);
  }

  /** Others that would pass in the same rows: the good ones first, of those its own kind first. */
  private List<String> instead(Decided decided) {
    return decided.table().columns().stream()
        .filter(other -> plannable(decided.subject(), other))
        .filter(other -> passes(decided, other).compareTo(Verdict.CARE) <= 0)
        .sorted(
            Comparator.comparing((TableItem other) -> passes(decided, other))
                .thenComparing(other -> alike(decided.column(), other) ? 0 : 1)
                .thenComparing(TableItem::title))
        .limit(MOST_INSTEAD)
        .map(TableItem::title)
        .toList();
  }

  private static Verdict passes(Decided decided, TableItem other) {
    return verdict(decided.table(), other, decided.rows());
  }

  /** What can be planned and stays on the wood by itself. */
  private boolean plannable(Pairing.Subject subject, TableItem other) {
    return subject != Pairing.Subject.FINISH_AT_PLACE
        || library
            .find(Kind.FINISHES, other.id())
            .flatMap(EngineData::finish)
            .filter(f -> f.role() == FinishRole.FILM || f.role() == FinishRole.PENETRATING)
            .isPresent();
  }

  private boolean alike(TableItem one, TableItem other) {
    return role(one).isPresent() && role(one).equals(role(other));
  }

  private Optional<FinishRole> role(TableItem item) {
    return library.find(Kind.FINISHES, item.id()).flatMap(EngineData::finish).map(Finish::role);
  }
}
