package benchlore.schedules.movement;

import benchlore.schedules.answer.QuantityKey;
import benchlore.schedules.answer.WorkingLine;
import benchlore.schedules.quantity.Figure;
import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.Unit;
import java.util.List;

/**
 * The moisture content wood settles at in steady air.
 *
 * <pre>
 * Idea: water is held as a dissolved part and as two layers on the cell wall.
 * EMC = 1800/W [ K h/(1 - K h) + (K1 K h + 2 K1 K2 K^2 h^2)/(1 + K1 K h + K1 K2 K^2 h^2) ]
 * h = relative humidity / 100, T in deg C
 * W  = 349 + 1.29 T + 0.0135 T^2          K  = 0.805 + 0.000736 T - 0.00000273 T^2
 * K1 = 6.27 - 0.00938 T - 0.000303 T^2    K2 = 1.91 + 0.0407 T - 0.000293 T^2
 * </pre>
 *
 * <p>Valid from {@value #LOW_CELSIUS} to {@value #HIGH_CELSIUS} deg C and 0 to 100 % relative
 * humidity; within 0.06 points of every cell of the handbook's table up to 43.3 deg C and 95 %.
 * Wood is not that exact: it lies a point or so higher while drying than while taking water up,
 * oily and heated woods lie lower, and the old measurements behind the table are poorly recorded
 * (FPL-GTR-229), so read a result as good to about a point. Source: USDA FPL-GTR-190 Wood Handbook
 * (2010), equation 4-5 and Table 4-2; FPL-RN-0268.
 */
public final class Moisture {
  static final double LOW_CELSIUS = -1.2;
  static final double HIGH_CELSIUS = 60;

  private Moisture() {}

  /**
   * Equilibrium moisture content, the bare figure.
   *
   * @param celsius air temperature, -1.2 to 60
   * @param relativeHumidityPercent 0 to 100
   * @return percent of the oven-dry mass; NaN outside those ranges
   */
  public static double equilibriumPercent(double celsius, double relativeHumidityPercent) {
    if (!(celsius >= LOW_CELSIUS && celsius <= HIGH_CELSIUS)
        || !(relativeHumidityPercent >= 0 && relativeHumidityPercent <= 100)) {
      return Double.NaN;
    }
    double t = celsius;
    double w = 349 + 1.29 * t + 0.0135 * t * t;
    double k = 0.805 + 0.000736 * t - 0.00000273 * t * t;
    double k1 = 6.27 - 0.00938 * t - 0.000303 * t * t;
    double k2 = 1.91 + 0.0407 * t - 0.000293 * t * t;
    double kh = k * relativeHumidityPercent / 100;
    double one = k1 * kh;
    double two = one * k2 * kh;
    double layers = (2 * two + one) / (1 + one + two);
    double dissolved = kh / (1 - kh);
    return 1800 / w * (dissolved + layers);
  }

  /** The line of working for air already checked. */
  static WorkingLine line(QuantityKey key, String name, SteadyAir air, Provenance from) {
    double percent = equilibriumPercent(air.celsius(), air.relativeHumidityPercent());
    return new WorkingLine(
        key,
        Figure.computed(name, percent, Unit.PERCENT),
        "EMC = 1800/W [K h/(1 - K h) + (K1 K h + 2 K1 K2 K^2 h^2)/(1 + K1 K h + K1 K2 K^2 h^2)]",
        List.of(
            Figure.of("air temperature", air.celsius(), Unit.CELSIUS, from),
            Figure.of("relative humidity", air.relativeHumidityPercent(), Unit.PERCENT, from)),
        FitSources.EMC);
  }
}
