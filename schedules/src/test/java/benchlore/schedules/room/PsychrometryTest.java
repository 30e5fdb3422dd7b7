package benchlore.schedules.room;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class PsychrometryTest {
  @Property(tries = 200)
  void dewPointAndHumidityUndoEachOther(
      @ForAll @DoubleRange(min = -20, max = 50) double celsius,
      @ForAll @DoubleRange(min = 5, max = 100) double humidity) {
    double dew = Psychrometry.dewPointCelsius(celsius, humidity);
    assertTrue(dew <= celsius + 1e-9);
    assertEquals(humidity, Psychrometry.relativeHumidityPercent(celsius, dew), 1e-8);
  }

  @Property(tries = 200)
  void warmerAirHoldsMore(
      @ForAll @DoubleRange(min = -30, max = 55) double celsius,
      @ForAll @DoubleRange(min = 0.01, max = 5) double more) {
    assertTrue(
        Psychrometry.saturationPascal(celsius + more) > Psychrometry.saturationPascal(celsius));
  }

  @Property(tries = 200)
  void deficitFallsWithHumidity(
      @ForAll @DoubleRange(min = -20, max = 50) double celsius,
      @ForAll @DoubleRange(min = 1, max = 100) double humidity) {
    double deficit = Psychrometry.deficitPascal(celsius, humidity);
    assertTrue(deficit >= 0);
    assertTrue(deficit <= Psychrometry.deficitPascal(celsius, humidity - 1));
  }

  /** The trade's short cut T - (100 - RH) / 5 is good in damp air, and only there. */
  @Property(tries = 200)
  void shortCutHoldsInDampAir(
      @ForAll @DoubleRange(min = 10, max = 30) double celsius,
      @ForAll @DoubleRange(min = 60, max = 100) double humidity) {
    double shortCut = celsius - (100 - humidity) / 5;
    assertEquals(shortCut, Psychrometry.dewPointCelsius(celsius, humidity), 1);
  }
}
