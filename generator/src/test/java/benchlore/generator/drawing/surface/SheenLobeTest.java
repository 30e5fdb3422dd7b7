package benchlore.generator.drawing.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The spread worked back from a gloss reading, against the bell curve summed in small steps. */
class SheenLobeTest {
  @ParameterizedTest
  @ValueSource(doubles = {1, 2.5, 5, 17.5, 27.5, 52.5, 77.5, 92.5})
  void theSpreadGivesTheReadingBack(double glossUnits) {
    double spread = SheenLobe.spread(glossUnits);
    double caught = within(2.2 / spread) * within(5.85 / spread);
    assertEquals(glossUnits, SheenLobe.SMOOTH_GU * caught, 0.001);
  }

  /** Share of a bell curve within this many standard deviations, by the midpoint rule. */
  private static double within(double deviations) {
    int steps = 20_000;
    double step = deviations / steps;
    double sum = 0;
    for (int i = 0; i < steps; i++) {
      double x = (i + 0.5) * step;
      sum += Math.exp(-x * x / 2) * step;
    }
    return 2 * sum / Math.sqrt(2 * Math.PI);
  }

  @Test
  void dullerIsWiderAndAMirrorIsSharp() {
    double last = Double.POSITIVE_INFINITY;
    for (double glossUnits = 1; glossUnits <= 100; glossUnits++) {
      double spread = SheenLobe.spread(glossUnits);
      assertTrue(spread < last || spread == 0, "at " + glossUnits);
      last = spread;
    }
    assertEquals(0, SheenLobe.spread(95));
  }

  @Test
  void blurringKeepsTheLight() {
    double sharp = sum(new BlurredPanes(-40, 40, 10, 0));
    for (double spread : new double[] {2, 10, 40}) {
      assertEquals(sharp, sum(new BlurredPanes(-40, 40, 10, spread)), 0.5);
    }
  }

  private static double sum(BlurredPanes panes) {
    double sum = 0;
    for (double x = -400; x <= 400; x += 0.25) {
      sum += panes.light(x) * 0.25;
    }
    return sum;
  }

  @Test
  void readingsOffTheScaleAreRefused() {
    var refusal =
        assertThrows(IllegalArgumentException.class, () -> new SheenSwatch(90, 120, false));
    assertEquals(
        "lowGu and highGu must run from 0 to 100, are 90.0 and 120.0", refusal.getMessage());
  }
}
