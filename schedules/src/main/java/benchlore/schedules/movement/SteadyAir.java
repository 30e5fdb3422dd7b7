package benchlore.schedules.movement;

import benchlore.schedules.answer.Checks;
import benchlore.schedules.quantity.Unit;

/**
 * Steady air that wood settles in. Any number may be given; a plan refuses air outside -1.2 to 60
 * deg C and 0 to 100 % relative humidity.
 *
 * @param celsius air temperature
 * @param relativeHumidityPercent relative humidity
 */
public record SteadyAir(double celsius, double relativeHumidityPercent) {
  /** Moisture content wood settles at in this air, percent; NaN for air out of range. */
  public double moisturePercent() {
    return Moisture.equilibriumPercent(celsius, relativeHumidityPercent);
  }

  void check(Checks checks, String input) {
    checks
        .within(
            input + ".celsius", celsius, Moisture.LOW_CELSIUS, Moisture.HIGH_CELSIUS, Unit.CELSIUS)
        .within(input + ".relativeHumidityPercent", relativeHumidityPercent, 0, 100, Unit.PERCENT);
  }
}
