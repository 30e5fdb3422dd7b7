package benchlore.generator.drawing.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Grain and grit: what the pictures say must be so. */
class SurfacesTest {
  @ParameterizedTest
  @EnumSource(BoardCut.class)
  void ringsMeetTheFaceAtTheAngleNamed(BoardCut cut) {
    double degrees = Math.toDegrees(Math.atan2(Math.abs(cut.pith().x()), -cut.pith().z()));
    assertTrue(
        degrees >= cut.fromDegrees() && degrees <= cut.toDegrees(), () -> cut + " " + degrees);
  }

  @ParameterizedTest
  @CsvSource({"1", "5", "10", "35", "125", "425", "1324", "5000"})
  void aFieldHoldsAFewToManyGrains(double micron) {
    int grains = Surfaces.grit(micron, "grit", "p").split("Z", -1).length - 2;
    assertTrue(grains >= 2 && grains <= 1500, () -> micron + " has " + grains);
  }

  @Test
  void gritOutsideItsRangeIsRefused() {
    var refusal =
        assertThrows(IllegalArgumentException.class, () -> Surfaces.grit(0.5, "grit", "p"));
    assertEquals("micron must be 1 to 5000, is 0.5", refusal.getMessage());
  }
}
