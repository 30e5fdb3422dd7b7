package benchlore.schedules.coating;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class ThinningTest {
  @ParameterizedTest(name = "{arguments}")
  @CsvFileSource(resources = "/published/coating/film.csv", numLinesToSkip = 1)
  void wetFilmMeetsThePublishedOnes(
      String kind, double solids, double film, double figure, double tolerance) {
    if (kind.equals("wet")) {
      assertEquals(figure, Thinning.wetFilmMicron(film, solids, 0), tolerance);
    }
  }

  /** Instrument maker: 4 wet mil at 25 % dry to 1; reduced one to one the same wet to half. */
  @Test
  void halfAndHalfHalvesTheSolids() {
    assertEquals(12.5, Thinning.solidsPercent(25, 1), 1e-12);
    assertEquals(101.6, Thinning.wetFilmMicron(12.7, 25, 1), 1e-9);
    assertEquals(1, Thinning.thinner(25, 12.5), 1e-12);
  }

  /** Supplier's formula with reducer: W = D (1 + R) / P; 4 mil, 60 %, a fifth: 8 mil. */
  @Test
  void aThinnedCoatGoesOnWetterByTheThinner() {
    assertEquals(8, Thinning.wetFilmMicron(4, 60, 0.2), 1e-12);
  }

  @Property(tries = 200)
  boolean thinningThereAndBack(
      @ForAll @DoubleRange(min = 5, max = 100) double solids,
      @ForAll @DoubleRange(min = 0, max = 10) double thinner) {
    double thin = Thinning.solidsPercent(solids, thinner);
    return Math.abs(Thinning.thinner(solids, thin) - thinner) < 1e-9;
  }

  @Test
  void nonsenseIsNoFigure() {
    assertTrue(Double.isNaN(Thinning.solidsPercent(0, 1)));
    assertTrue(Double.isNaN(Thinning.solidsPercent(101, 1)));
    assertTrue(Double.isNaN(Thinning.wetFilmMicron(-1, 50, 0)));
    assertTrue(Double.isNaN(Thinning.thinner(30, 40)));
  }
}
