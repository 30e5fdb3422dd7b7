package benchlore.schedules.movement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class MoistureTest {
  @ParameterizedTest(name = "{0} C, {1} % -> {2} % within {3}: {4} [{5}]")
  @CsvFileSource(
      resources = {"/published/wood/emc.csv", "/published/wood/emc-worked.csv"},
      numLinesToSkip = 1)
  void meetsPublishedFigure(double celsius, double humidity, double percent, double tolerance) {
    assertEquals(percent, Moisture.equilibriumPercent(celsius, humidity), tolerance);
  }

  @ParameterizedTest
  @CsvSource({"-40, 50", "500, 50", "20, -1", "20, 101", "NaN, 50", "20, NaN", "Infinity, 50"})
  void refusesAirOutOfRange(double celsius, double humidity) {
    assertTrue(Double.isNaN(Moisture.equilibriumPercent(celsius, humidity)));
  }

  @Test
  void isZeroInBoneDryAir() {
    assertEquals(0, Moisture.equilibriumPercent(20, 0), 0);
  }

  /** Rule of thumb seen in an extension column: 5 points of humidity are about 1 of moisture. */
  @Test
  void fivePointsOfHumidityAreAboutOneOfMoisture() {
    double low = Moisture.equilibriumPercent(21, 30);
    double high = Moisture.equilibriumPercent(21, 65);
    assertEquals(1, (high - low) / 7, 0.25);
  }

  @Property(tries = 200)
  boolean risesWithHumidity(
      @ForAll @DoubleRange(min = -1.2, max = 60) double celsius,
      @ForAll @DoubleRange(min = 0, max = 99) double humidity) {
    return Moisture.equilibriumPercent(celsius, humidity + 1)
        > Moisture.equilibriumPercent(celsius, humidity);
  }

  /** From 10 deg C up; below that table and formula are flat in temperature. */
  @Property(tries = 200)
  boolean fallsWithTemperature(
      @ForAll @DoubleRange(min = 10, max = 58) double celsius,
      @ForAll @DoubleRange(min = 5, max = 95) double humidity) {
    return Moisture.equilibriumPercent(celsius + 2, humidity)
        < Moisture.equilibriumPercent(celsius, humidity);
  }

  @Property(tries = 200)
  boolean staysBetweenDryAndFibreSaturation(
      @ForAll @DoubleRange(min = -1.2, max = 60) double celsius,
      @ForAll @DoubleRange(min = 0, max = 100) double humidity) {
    double percent = Moisture.equilibriumPercent(celsius, humidity);
    return percent >= 0 && percent < 32;
  }

  @ParameterizedTest
  @EnumSource(PlaceClimate.class)
  void everyPlaceHasADryAndADampSeason(PlaceClimate place) {
    assertTrue(place.seasons().lowPercent() + 1 < place.seasons().highPercent());
    assertTrue(place.seasons().highPercent() < FitFigures.MOST_MOISTURE_PERCENT);
  }

  /** Wood Handbook chapter 13: 4 to 6 % in heated rooms, about 12 % outdoors under cover. */
  @Test
  void placesAgreeWithTheHandbooksLevels() {
    double heated = PlaceClimate.HEATED_ROOM.seasons().lowPercent();
    assertTrue(heated >= 4 && heated <= 6);
    Seasons covered = PlaceClimate.OUTDOORS_COVERED.seasons();
    assertTrue(covered.lowPercent() < 12 && covered.highPercent() > 12);
  }
}
