package benchlore.generator.compatibility;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import benchlore.generator.content.Library;
import benchlore.schedules.compatibility.Verdict;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How rows decide: strictest first, all reasons kept, nothing guessed. */
final class RulesTest {
  private static final String ALL_GOOD =
      """
        - { verdict: good, why: "Good on anything at all.", from: common-practice }
      """;

  @TempDir private Path folder;
  private static Library library;

  @BeforeAll
  static void readRecords() throws IOException {
    library = Tables.library();
  }

  @Test
  void theStrictestRowDecidesAndEveryReasonStays() throws IOException {
    Table table =
        Tables.small(
            ALL_GOOD
                + """
                  - { wood: { oily: true }, verdict: "no", why: "Too oily to hold at all.", from: common-practice }
                  - { wood: { species: [teak] }, verdict: with-care, why: "Teak wants a wipe first.", from: from-memory }
                """,
            folder,
            library);
    Table.Cell teak = Tables.cell(table, "teak", "yellow-pva");
    assertEquals(Verdict.NO, teak.verdict());
    assertEquals(
        List.of("Too oily to hold at all.", "Teak wants a wipe first.", "Good on anything at all."),
        teak.reasons().stream().map(Table.Reason::why).toList());
    assertEquals(Verdict.GOOD, Tables.cell(table, "white-ash", "yellow-pva").verdict());
  }

  @Test
  void aPairThatNoRowCoversIsSentToScrap() throws IOException {
    Table table =
        Tables.small(
            """
              - { wood: { oily: true }, verdict: good, why: "Only oily woods are known.", from: from-memory }
            """,
            folder,
            library);
    Table.Cell ash = Tables.cell(table, "white-ash", "yellow-pva");
    assertEquals(Verdict.UNKNOWN, ash.verdict());
    assertEquals("No rule covers this pair: try on scrap.", ash.reasons().get(0).why());
  }

  @Test
  void aFactNobodyWroteDownIsNotGuessed() throws IOException {
    // The hardness of black willow is not in its record.
    String soft = hardness("at-most", 400, "with-care");
    Table table = Tables.small(ALL_GOOD + soft, folder, library);
    Table.Cell willow = Tables.cell(table, "black-willow", "yellow-pva");
    assertEquals(Verdict.UNKNOWN, willow.verdict());
    assertEquals("Not known: its hardness. Try on scrap.", willow.reasons().get(0).why());
    assertEquals(Verdict.GOOD, Tables.cell(table, "hard-maple", "yellow-pva").verdict());
    assertEquals(Verdict.CARE, Tables.cell(table, "balsa", "yellow-pva").verdict());
  }

  @Test
  void aMissingFactThatCouldOnlyPraiseChangesNothing() throws IOException {
    Table table = Tables.small(ALL_GOOD + hardness("at-least", 400, "good"), folder, library);
    Table.Cell willow = Tables.cell(table, "black-willow", "yellow-pva");
    assertEquals(Verdict.GOOD, willow.verdict());
    assertEquals(1, willow.reasons().size());
  }

  @Test
  void aRangeThatReachesTheLimitCounts() throws IOException {
    // Teak is given as 1000 to 1155 lbf.
    Table least = Tables.small(ALL_GOOD + hardness("at-least", 1155, "no"), folder, library);
    assertEquals(Verdict.NO, Tables.cell(least, "teak", "yellow-pva").verdict());
    Table above = Tables.small(ALL_GOOD + hardness("at-least", 1156, "no"), folder, library);
    assertEquals(Verdict.GOOD, Tables.cell(above, "teak", "yellow-pva").verdict());
    Table most = Tables.small(ALL_GOOD + hardness("at-most", 1000, "no"), folder, library);
    assertEquals(Verdict.NO, Tables.cell(most, "teak", "yellow-pva").verdict());
  }

  @Test
  void exceptionsAreLeftOut() throws IOException {
    Table table =
        Tables.small(
            ALL_GOOD
                + """
                  - { glue: { adhesive: { none-of: [yellow-pva] } }, verdict: "no", why: "Only yellow glue will do here.", from: from-memory }
                """,
            folder,
            library);
    assertEquals(Verdict.GOOD, Tables.cell(table, "teak", "yellow-pva").verdict());
    assertEquals(Verdict.NO, Tables.cell(table, "teak", "white-pva").verdict());
  }

  @Test
  void aCellWithoutAReasonIsAFault() {
    assertThrows(IllegalArgumentException.class, () -> new Table.Cell(Verdict.GOOD, List.of()));
  }

  private static String hardness(String limit, int lbf, String verdict) {
    return """
      - wood: { hardness: { %s: { value: %d, unit: lbf, from: from-memory } } }
        verdict: "%s"
        why: "Hardness of {limit} matters here."
        from: from-memory
    """
        .formatted(limit, lbf, verdict);
  }
}
