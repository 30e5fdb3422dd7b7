package benchlore.generator.compatibility;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.generator.content.Fact;
import benchlore.generator.content.Library;
import benchlore.schedules.compatibility.Verdict;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Every cell of the tables that the site shows. */
final class RealTablesTest {
  private static final Path EXPECTED =
      Path.of("src", "test", "resources", "tables", "expected.tsv");
  private static final Map<TableKind, Table> TABLES = new EnumMap<>(TableKind.class);

  /** The places that a finish's record lists itself. */
  private static final Set<String> PLACES =
      Set.of("indoor-dry", "indoor-wet", "outdoor-sheltered", "outdoor-exposed");

  @BeforeAll
  static void readContent() throws IOException {
    Library library = Tables.library();
    for (TableKind kind : TableKind.values()) {
      TABLES.put(kind, Tables.real(kind, library));
    }
  }

  @ParameterizedTest
  @EnumSource(TableKind.class)
  void everyCellIsExplained(TableKind kind) {
    Table table = TABLES.get(kind);
    Map<Verdict, Integer> counts = new EnumMap<>(Verdict.class);
    for (TableItem row : table.rows()) {
      for (TableItem column : table.columns()) {
        Table.Cell cell = table.cell(row, column);
        String pair = row.id() + " and " + column.id();
        assertFalse(cell.reasons().isEmpty(), pair);
        cell.reasons().forEach(reason -> assertTrue(reason.why().length() >= 20, pair));
        assertEquals(cell.verdict(), cell.reasons().get(0).verdict(), pair);
        counts.merge(cell.verdict(), 1, Integer::sum);
      }
    }
    System.out.println("table " + kind.file() + ": " + counts);
    assertTrue(counts.keySet().containsAll(Set.of(Verdict.GOOD, Verdict.CARE, Verdict.NO)));
  }

  static Stream<List<String>> expected() throws IOException {
    return Files.readAllLines(EXPECTED).stream()
        .filter(line -> !line.startsWith("#"))
        .map(line -> List.of(line.split("\t", -1)));
  }

  @ParameterizedTest
  @MethodSource("expected")
  void aTradesmanWouldSaySo(List<String> row) {
    TableKind kind = TableKind.valueOf(row.get(0).toUpperCase(Locale.ROOT).replace('-', '_'));
    Table.Cell cell = Tables.cell(TABLES.get(kind), row.get(1), row.get(2));
    assertEquals(
        row.get(3),
        cell.verdict().name().toLowerCase(Locale.ROOT),
        () -> cell.reasons().toString());
  }

  @Test
  void noFinishIsPraisedWhereItsRecordDoesNotPutIt() {
    Table table = TABLES.get(TableKind.FINISH_BY_PLACE);
    List<String> wrong = new ArrayList<>();
    for (TableItem place : table.rows()) {
      for (TableItem finish : table.columns()) {
        boolean listed = lists(finish, place.id());
        boolean refused = table.cell(place, finish).verdict() == Verdict.NO;
        if (PLACES.contains(place.id()) && listed == refused) {
          wrong.add(finish.id() + " at " + place.id());
        }
      }
    }
    assertEquals(List.of(), wrong);
  }

  @Test
  void noGlueIsPraisedOnOilyWoodAgainstItsRecord() {
    Table table = TABLES.get(TableKind.ADHESIVE_BY_SPECIES);
    for (TableItem wood : table.rows()) {
      for (TableItem glue : table.columns()) {
        if (((Fact.Flag) wood.facts().get("oily")).yes()) {
          Verdict verdict = table.cell(wood, glue).verdict();
          switch (((Fact.Words) glue.facts().get("oily-woods")).text()) {
            case "avoid" -> assertEquals(Verdict.NO, verdict, glue.id());
            case "with-care" -> assertTrue(verdict.compareTo(Verdict.CARE) >= 0, glue.id());
            default -> assertTrue(verdict != Verdict.NO, glue.id());
          }
        }
      }
    }
  }

  @ParameterizedTest
  @EnumSource(TableKind.class)
  void noRuleIsDead(TableKind kind) {
    Table table = TABLES.get(kind);
    Set<Table.Reason> used = new HashSet<>();
    for (TableItem row : table.rows()) {
      table.columns().forEach(column -> used.addAll(table.cell(row, column).reasons()));
    }
    List<Table.Reason> dead = new ArrayList<>(table.reasons());
    dead.removeAll(used);
    assertEquals(List.of(), dead);
  }

  private static boolean lists(TableItem finish, String place) {
    return ((Fact.Items) finish.facts().get("places"))
        .items().stream().anyMatch(item -> ((Fact.Words) item).text().equals(place));
  }
}
