package benchlore.schedules.material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;

/** How much lands on the work, against published figures. */
class TransferTest {
  @ParameterizedTest(name = "{arguments}")
  @CsvFileSource(resources = "/published/trade/transfer.csv", numLinesToSkip = 1)
  void published(ArgumentsAccessor row) {
    SourcedRange found =
        Transfer.of(
            ApplicationMethod.valueOf(row.getString(0)), SprayGun.valueOf(row.getString(1)));
    assertEquals(row.getDouble(2), found.low());
    assertEquals(row.getDouble(3), found.high());
  }

  /** No gun brings more onto the work than a brush does, and the gun counts for spraying alone. */
  @Test
  void theGunCountsForSprayingAlone() {
    for (ApplicationMethod method : ApplicationMethod.values()) {
      SourcedRange usual = Transfer.of(method, SprayGun.HVLP);
      for (SprayGun gun : SprayGun.values()) {
        SourcedRange found = Transfer.of(method, gun);
        assertEquals(Unit.RATIO, found.unit());
        assertTrue(found.low() > 0 && found.high() < 1, method + " " + gun);
        if (method == ApplicationMethod.SPRAY) {
          assertTrue(found.high() < Transfer.of(ApplicationMethod.BRUSH, gun).low());
        } else {
          assertEquals(usual, found);
        }
      }
    }
  }

  @Test
  void nullIsNamed() {
    String said =
        assertThrows(NullPointerException.class, () -> Transfer.of(null, SprayGun.HVLP))
            .getMessage();
    assertEquals("method", said);
    assertThrows(NullPointerException.class, () -> Transfer.of(ApplicationMethod.BRUSH, null));
  }
}
