package benchlore.generator.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.generator.content.Kind;
import benchlore.generator.content.LibraryRecord;
import benchlore.generator.planning.Content;
import benchlore.schedules.material.Sheen;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.sanding.SheenRub;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What the sheen records say is what the schedules plan with. */
final class SheenRecordsTest {
  private static List<LibraryRecord> sheens;

  @BeforeAll
  static void load() throws IOException {
    sheens = Content.library(Folders.CONTENT).value().orElseThrow().of(Kind.SHEENS);
  }

  private static List<LibraryRecord> plannedAs(Sheen sheen) {
    return sheens.stream()
        .filter(s -> !s.facts().words("planned-as").isEmpty())
        .filter(s -> s.facts().word("planned-as", Sheen.class) == sheen)
        .toList();
  }

  @ParameterizedTest
  @EnumSource(Sheen.class)
  void theRecordsOfASheenSpanItsGlossUnits(Sheen sheen) {
    double low = Double.POSITIVE_INFINITY;
    double high = 0;
    for (LibraryRecord record : plannedAs(sheen)) {
      SourcedRange gloss = record.facts().datum("gloss-60");
      low = Math.min(low, gloss.low());
      high = Math.max(high, gloss.high());
    }
    assertEquals(sheen.glossUnits().low(), low, "least gloss units");
    assertEquals(sheen.glossUnits().high(), high, "most gloss units");
  }

  @ParameterizedTest
  @EnumSource(Sheen.class)
  void theLastPaperIsTheRubOutRule(Sheen sheen) {
    SourcedRange rule = SheenRub.of(sheen).lastPaper();
    List<SourcedRange> papers =
        plannedAs(sheen).stream()
            .flatMap(s -> s.facts().optionalDatum("last-paper").stream())
            .toList();
    assertFalse(papers.isEmpty());
    for (SourcedRange paper : papers) {
      assertEquals(rule.low(), paper.low());
      assertEquals(rule.high(), paper.high());
    }
  }

  @Test
  void everyRecordStaysOnTheScale() {
    for (LibraryRecord sheen : sheens) {
      SourcedRange gloss = sheen.facts().datum("gloss-60");
      assertTrue(gloss.low() >= 0 && gloss.high() <= 100, sheen.id());
    }
  }
}
