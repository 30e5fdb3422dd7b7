package benchlore.schedules.air;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** The two air sums a hygienist does by hand, against published ones. */
class SteadyAndMixedTest {
  @ParameterizedTest(name = "{0}")
  @CsvFileSource(
      resources = "/published/air/dilution-flow.csv",
      numLinesToSkip = 1,
      delimiter = '|')
  void aSteadyReleaseComesToThePublishedConcentration(
      String what,
      double molarGram,
      double litrePerHour,
      double kilogramPerLitre,
      double limitPpm,
      double mixing,
      double celsius,
      double flowPerHour,
      double tolerance) {
    double release = litrePerHour * kilogramPerLitre / 3600;
    double steady = SteadyState.kilogramPerCubicMetre(release, flowPerHour / 3600, mixing);
    double volume = Vapour.ppm(steady, molarGram / 1000, celsius);
    assertEquals(limitPpm, volume, limitPpm * 0.012, what);
    double flow = SteadyState.cubicMetrePerSecond(release, steady, mixing);
    assertEquals(flowPerHour, flow * 3600, 1e-6);
  }

  @Test
  void nonsenseIsNoFigure() {
    assertTrue(Double.isNaN(SteadyState.kilogramPerCubicMetre(1, 0, 1)));
    assertTrue(Double.isNaN(SteadyState.kilogramPerCubicMetre(-1, 1, 1)));
    assertTrue(Double.isNaN(SteadyState.kilogramPerCubicMetre(1, 1, 0.5)));
    assertTrue(Double.isNaN(SteadyState.cubicMetrePerSecond(1, 0, 1)));
    assertThrows(IllegalArgumentException.class, () -> new MixtureLimit.Part(1, 0));
    assertThrows(IllegalArgumentException.class, () -> new MixtureLimit.Part(-1, 1));
  }

  @ParameterizedTest(name = "{0}")
  @CsvFileSource(
      resources = "/published/air/mixture-index.csv",
      numLinesToSkip = 1,
      delimiter = '|')
  void vapoursAddUpAsTheRuleDoesIt(String what, String terms, double index, double tolerance) {
    List<MixtureLimit.Part> parts = new ArrayList<>();
    for (String term : terms.split(" ", -1)) {
      String[] sides = term.split(":", -1);
      parts.add(new MixtureLimit.Part(Double.parseDouble(sides[0]), Double.parseDouble(sides[1])));
    }
    assertEquals(index, MixtureLimit.index(parts), tolerance, what);
  }

  /** A safety consultant's page: 150 of 200 ppm methanol and 300 of 400 ppm ethyl acetate: 1.5. */
  @Test
  void eachUnderItsLimitMayBeOverTogether() {
    List<MixtureLimit.Part> both =
        List.of(new MixtureLimit.Part(150, 200), new MixtureLimit.Part(300, 400));
    assertEquals(1.5, MixtureLimit.index(both), 1e-12);
  }

  /**
   * The conference's own example, from memory: 50, 30 and 20 % at 1640, 1910 and 170: 610 mg/m3.
   */
  @Test
  void theLimitOfALiquidIsThatOfItsParts() {
    List<MixtureLimit.Part> liquid =
        List.of(
            new MixtureLimit.Part(0.5, 1640),
            new MixtureLimit.Part(0.3, 1910),
            new MixtureLimit.Part(0.2, 170));
    assertEquals(610, MixtureLimit.ofLiquid(liquid), 5);
    assertTrue(Double.isNaN(MixtureLimit.ofLiquid(liquid.subList(0, 2))));
  }
}
