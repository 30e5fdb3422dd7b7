package benchlore.schedules.caution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.StepId;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.quantity.Unit;
import java.io.IOException;
import java.lang.reflect.Field;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The table is where every caution comes from, and says each danger once. */
class CautionTableTest {
  private static final Path MAIN = Path.of("src/main/java/benchlore/schedules");
  private static final List<Class<?>> TABLES =
      List.of(
          AirRows.class,
          CoatingRows.class,
          CuttingRows.class,
          FitRows.class,
          GlueUpRows.class,
          SandingRows.class,
          ShopRows.class);

  @Test
  void everyFileOfRowsIsLookedAtHere() throws IOException {
    Set<String> files = new HashSet<>();
    try (Stream<Path> all = Files.list(MAIN.resolve("caution"))) {
      all.map(p -> p.getFileName().toString())
          .filter(n -> n.endsWith("Rows.java"))
          .forEach(n -> files.add(n.replace(".java", "")));
    }
    Set<String> here = new HashSet<>();
    TABLES.forEach(table -> here.add(table.getSimpleName()));
    assertEquals(files, here);
  }

  @Test
  void codesAreUniqueAndTheNameOfTheirRow() {
    Set<String> codes = new HashSet<>();
    rows()
        .forEach(
            (name, row) -> {
              assertTrue(codes.add(row.code()), row.code());
              String constant = row.code().toUpperCase(java.util.Locale.ROOT).replace('-', '_');
              assertEquals(constant, name.substring(name.indexOf('.') + 1));
            });
    assertTrue(codes.contains("oily-rags"));
  }

  @Test
  void noTwoRowsSayTheSame() {
    Set<String> words = new HashSet<>();
    rows().forEach((name, row) -> assertTrue(words.add(row.what() + row.measure()), name));
  }

  @Test
  void everyRowIsGivenSomewhere() throws IOException {
    String engine = engine();
    List<String> unused = new ArrayList<>();
    for (String name : rows().keySet()) {
      if (!engine.matches("(?s).*\\b" + name.replace(".", "\\s*\\.\\s*") + "\\b.*")) {
        unused.add(name);
      }
    }
    assertEquals(List.of(), unused);
  }

  /** So a code given that is no row can't be. */
  @Test
  void theEngineMakesNoCautionButFromARow() throws IOException {
    assertFalse(engine().contains("new Caution("));
    assertFalse(engine().contains("new CautionRow("));
  }

  @Test
  void aCautionKeepsTheCodeAndProvenanceOfItsRow() {
    Caution caution =
        GlueUpRows.OVER_CLAMPING
            .with("joint", "rail")
            .caution(List.of(Quantity.of(7e5, Unit.PASCAL)), List.of(Quantity.of(900, Unit.NEWTON)))
            .at(StepId.Task.GLUE.number(2));
    assertEquals("over-clamping", caution.code());
    assertEquals(GlueUpRows.OVER_CLAMPING.from(), caution.from());
    assertTrue(caution.what().pattern().contains("\"rail\""), caution.what().pattern());
    assertEquals("glue-2", caution.step().orElseThrow().name());
  }

  @Test
  void aPlaceWithoutItsQuantityIsTheProgrammersFault() {
    assertThrows(IllegalArgumentException.class, CoatingRows.POT_LIFE::caution);
  }

  /** Rows by class and constant. */
  private static SortedMap<String, CautionRow> rows() {
    SortedMap<String, CautionRow> rows = new TreeMap<>();
    for (Class<?> table : TABLES) {
      for (Field field : table.getDeclaredFields()) {
        if (field.getType() == CautionRow.class) {
          try {
            rows.put(table.getSimpleName() + "." + field.getName(), (CautionRow) field.get(null));
          } catch (IllegalAccessException e) {
            throw new AssertionError(e);
          }
        }
      }
    }
    return rows;
  }

  /** The engine's sources but those of the table and of the caution itself, one text. */
  private static String engine() throws IOException {
    StringBuilder text = new StringBuilder();
    try (Stream<Path> all = Files.walk(MAIN)) {
      List<Path> sources =
          all.filter(p -> p.toString().endsWith(".java"))
              .filter(p -> !p.startsWith(MAIN.resolve("caution")))
              .filter(p -> !p.endsWith("answer/Caution.java"))
              .toList();
      for (Path source : sources) {
        text.append(Files.readString(source));
      }
    }
    return text.toString();
  }
}
