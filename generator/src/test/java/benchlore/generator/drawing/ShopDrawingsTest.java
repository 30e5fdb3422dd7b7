package benchlore.generator.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Grain, grit and clamps: what the pictures say must be so. */
class ShopDrawingsTest {
  @ParameterizedTest
  @EnumSource(BoardCut.class)
  void ringsMeetTheFaceAtTheAngleNamed(BoardCut cut) {
    double degrees = Math.toDegrees(Math.atan2(Math.abs(cut.pith().x()), -cut.pith().z()));
    assertTrue(
        degrees >= cut.fromDegrees() && degrees <= cut.toDegrees(), () -> cut + " " + degrees);
  }

  @ParameterizedTest
  @CsvSource({"40, 90, 250, 220, 30", "40, 70, 160, 180, 0", "40, 60, 160, 160, 0"})
  void conesSpreadAt45Degrees(
      double pad, double through, double spacing, double covered, double gap) {
    ClampSpread spread = new ClampSpread(pad, through, spacing);
    assertEquals(covered, spread.coveredMm(), 1e-9);
    assertEquals(gap, spread.gapMm(), 1e-9);
  }

  @Test
  void clampMeasuresAreRefusedByName() {
    var refusal = assertThrows(IllegalArgumentException.class, () -> new ClampSpread(40, 0, 100));
    assertEquals("throughMm must be more than 0, is 0.0", refusal.getMessage());
  }

  @ParameterizedTest
  @CsvSource({"1", "5", "10", "35", "125", "425", "1324", "5000"})
  void aFieldHoldsAFewToManyGrains(double micron) {
    int grains = Drawings.grit(micron, "grit", "p").split("Z", -1).length - 2;
    assertTrue(grains >= 2 && grains <= 1500, () -> micron + " has " + grains);
  }

  @Test
  void gritOutsideItsRangeIsRefused() {
    var refusal =
        assertThrows(IllegalArgumentException.class, () -> Drawings.grit(0.5, "grit", "p"));
    assertEquals("micron must be 1 to 5000, is 0.5", refusal.getMessage());
  }
}
