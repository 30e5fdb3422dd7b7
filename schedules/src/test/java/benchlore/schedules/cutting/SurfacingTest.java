package benchlore.schedules.cutting;

import static benchlore.schedules.cutting.CutTables.value;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import benchlore.schedules.answer.Answer;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SurfacingTest {
  /** Counted by hand: 25 mm bit, 40 % over, 600 mm across: 575 / 15 = 38.3, so 39 steps. */
  @Test
  void spoilboardOfSixHundredByNineHundred() {
    Surfacing surfacing =
        value(Cutting.plan(new SurfacingRequest(0.9, 0.6, 0.025, 40, 0.001, 0.0005, 0.05)));
    assertEquals(40, surfacing.strokes());
    assertEquals(0.575 / 39, surfacing.stepMetre(), 1e-12);
    assertEquals(2, surfacing.layers());
    assertEquals(2 * (40 * 0.9 + 0.575), surfacing.pathMetre(), 1e-9);
    assertEquals(1463, surfacing.seconds(), 1e-6);
    assertEquals(24_000, surfacing.highestRpm());
  }

  @Test
  void bitWiderThanTheBoardTakesOneStroke() {
    Surfacing surfacing =
        value(Cutting.plan(new SurfacingRequest(0.5, 0.06, 0.07, 30, 0.0005, 0.0005, 0.05)));
    assertEquals(1, surfacing.strokes());
    assertEquals(0, surfacing.stepMetre());
    assertEquals(0.5, surfacing.pathMetre(), 1e-12);
  }

  @ParameterizedTest
  @CsvSource({
    "NaN, 0.6, 0.025, 40, 0.001, 0.05",
    "0.9, -1, 0.025, 40, 0.001, 0.05",
    "0.9, 0.6, 0, 40, 0.001, 0.05",
    "0.9, 0.6, 0.025, 100, 0.001, 0.05",
    "0.9, 0.6, 0.025, 40, Infinity, 0.05",
    "0.9, 0.6, 0.025, 40, 0.001, 0"
  })
  void refusesNonsense(
      double length, double across, double bit, double overlap, double remove, double feed) {
    assertInstanceOf(
        Answer.Refused.class,
        Cutting.plan(new SurfacingRequest(length, across, bit, overlap, remove, 0.0005, feed)));
  }

  /** Independent check: every strip of the board is walked over by some stroke. */
  @Property(tries = 200)
  boolean nothingIsLeftStandingAndNoLayerIsTooDeep(
      @ForAll @Scale(3) @DoubleRange(min = 0.05, max = 4) double across,
      @ForAll @Scale(4) @DoubleRange(min = 0.003, max = 0.0889) double bit,
      @ForAll @DoubleRange(min = 5, max = 90) double overlap,
      @ForAll @Scale(4) @DoubleRange(min = 0.0001, max = 0.02) double remove) {
    Surfacing surfacing =
        value(Cutting.plan(new SurfacingRequest(1, across, bit, overlap, remove, 0.0005, 0.05)));
    double first = Math.min(bit, across);
    double reached = first + (surfacing.strokes() - 1) * surfacing.stepMetre();
    return reached >= across - 1e-6
        && surfacing.stepMetre() <= bit * (1 - overlap / 100) + 1e-12
        && surfacing.layerMetre() <= 0.0005
        && Math.abs(surfacing.layerMetre() * surfacing.layers() - remove) < 1e-9
        && surfacing.seconds() > 0;
  }

  @Property(tries = 200)
  boolean moreOverlapIsNeverFaster(
      @ForAll @DoubleRange(min = 5, max = 80) double overlap,
      @ForAll @DoubleRange(min = 0.1, max = 2) double across) {
    return seconds(across, overlap) <= seconds(across, overlap + 10) + 1e-9;
  }

  private static double seconds(double across, double overlap) {
    return value(
            Cutting.plan(new SurfacingRequest(1, across, 0.025, overlap, 0.0005, 0.0005, 0.05)))
        .seconds();
  }
}
