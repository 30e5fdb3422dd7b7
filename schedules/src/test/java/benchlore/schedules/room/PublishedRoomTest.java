package benchlore.schedules.room;

import static org.junit.jupiter.api.Assertions.assertEquals;

import benchlore.schedules.time.Moment;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;

/** The room's formulas against published figures, one row a test. */
class PublishedRoomTest {
  private static final Moment START = Moment.of(2026, 1, 1, 0, 0);

  @ParameterizedTest(name = "{arguments}")
  @CsvFileSource(resources = "/published/room/saturation.csv", numLinesToSkip = 1)
  void saturation(ArgumentsAccessor row) {
    double found = Psychrometry.saturationPascal(row.getDouble(0)) / 1000;
    assertEquals(row.getDouble(1), found, row.getDouble(2));
  }

  @ParameterizedTest(name = "{arguments}")
  @CsvFileSource(resources = "/published/room/dewpoint.csv", numLinesToSkip = 1)
  void dewPoint(ArgumentsAccessor row) {
    double found = Psychrometry.dewPointCelsius(row.getDouble(0), row.getDouble(1));
    assertEquals(row.getDouble(2), found, row.getDouble(3));
  }

  @ParameterizedTest(name = "{arguments}")
  @CsvFileSource(resources = "/published/room/maturity.csv", numLinesToSkip = 1)
  void maturity(ArgumentsAccessor row) {
    double reference = row.getDouble(3);
    double parameter = row.getDouble(4);
    EquivalentAge.Rate rate =
        switch (row.getString(0)) {
          case "q10" -> EquivalentAge.of(new TemperatureRule.Q10(parameter, reference));
          case "linear", "nurse-saul" ->
              EquivalentAge.of(new TemperatureRule.NurseSaul(parameter, reference));
          case "arrhenius" -> EquivalentAge.of(new TemperatureRule.Arrhenius(parameter, reference));
          default -> throw new IllegalArgumentException(row.getString(0));
        };
    Climate room = Climate.steady(row.getDouble(2), 50);
    double hours = EquivalentAge.ageSeconds(room, START, row.getDouble(1) * 3600, rate) / 3600;
    // A degree-day sum is printed in degree days, an equivalent age in hours.
    double degrees = reference - parameter;
    double found = row.getString(0).equals("linear") ? hours / 24 * degrees : hours;
    assertEquals(row.getDouble(5), found, row.getDouble(6));
  }
}
