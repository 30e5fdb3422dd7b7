package benchlore.schedules.cutting;

import benchlore.schedules.quantity.Numeric;

/**
 * Turning speed and the speed of the cutting edge.
 *
 * <pre>
 * rim = pi D n / 60;   n = 60 rim / (pi D)
 * </pre>
 */
public final class RimSpeed {
  private RimSpeed() {}

  /**
   * Speed of the edge.
   *
   * @param diameterMetre of the cutter, above 0
   * @param rpm turning speed, 0 or more
   * @return m/s; NaN outside those ranges
   */
  public static double metrePerSecond(double diameterMetre, double rpm) {
    return diameterMetre > 0 && rpm >= 0 ? Numeric.PI * diameterMetre * rpm / 60 : Double.NaN;
  }

  /**
   * Turning speed that gives the edge a speed.
   *
   * @param diameterMetre of the cutter, above 0
   * @param metrePerSecond speed of the edge, 0 or more
   * @return revolutions a minute; NaN outside those ranges
   */
  public static double rpm(double diameterMetre, double metrePerSecond) {
    return diameterMetre > 0 && metrePerSecond >= 0
        ? 60 * metrePerSecond / (Numeric.PI * diameterMetre)
        : Double.NaN;
  }
}
