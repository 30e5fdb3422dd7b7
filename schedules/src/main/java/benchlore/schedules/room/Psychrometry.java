package benchlore.schedules.room;

import benchlore.schedules.quantity.Numeric;

/**
 * Water vapour in air.
 *
 * <pre>
 * Saturation (Buck 1996, over water): es = 611.21 exp((18.678 - T/234.5) T / (257.14 + T)), Pa, T in deg C
 * Dew point (Magnus, 17.625 and 243.04): g = ln(RH/100) + b T / (c + T);  Td = c g / (b - g)
 * </pre>
 *
 * <p>Valid 0 to 50 deg C (saturation within 0.05 % of the CRC-type table there) and relative
 * humidity above 0 up to 100 %. The dew point pair is published as within 0.35 deg C from -40 to
 * 60. Sources: A. L. Buck, J. Appl. Meteorol. 20 (1981), revised 1996; O. A. Alduchov and R. E.
 * Eskridge, J. Appl. Meteorol. 35 (1996), coefficients b and c.
 */
public final class Psychrometry {
  private static final double MAGNUS_B = 17.625;
  private static final double MAGNUS_C = 243.04;

  private Psychrometry() {}

  /**
   * Saturation vapour pressure over water.
   *
   * @param celsius air temperature, -40 to 60
   * @return pascals
   */
  public static double saturationPascal(double celsius) {
    double slope = 18.678 - celsius / 234.5;
    return 611.21 * Numeric.exp(slope * celsius / (257.14 + celsius));
  }

  /**
   * Dew point.
   *
   * @param celsius air temperature, -40 to 60
   * @param relativeHumidityPercent above 0, to 100
   * @return deg C, never above {@code celsius} by more than rounding
   */
  public static double dewPointCelsius(double celsius, double relativeHumidityPercent) {
    double curve = MAGNUS_B * celsius / (MAGNUS_C + celsius);
    double g = Numeric.log(relativeHumidityPercent / 100) + curve;
    return MAGNUS_C * g / (MAGNUS_B - g);
  }

  /**
   * Relative humidity of air whose dew point is known: e(Td) / es(T) by the same Magnus pair, so
   * that it undoes {@link #dewPointCelsius}.
   *
   * @param celsius air temperature, -40 to 60
   * @param dewPointCelsius not above {@code celsius}
   * @return percent, 0 to 100
   */
  public static double relativeHumidityPercent(double celsius, double dewPointCelsius) {
    double atDew = MAGNUS_B * dewPointCelsius / (MAGNUS_C + dewPointCelsius);
    double atAir = MAGNUS_B * celsius / (MAGNUS_C + celsius);
    double percent = 100 * Numeric.exp(atDew - atAir);
    return percent > 100 ? 100 : percent;
  }

  /**
   * Vapour-pressure deficit: how much more water the air could take up.
   *
   * @param celsius air temperature, -40 to 60
   * @param relativeHumidityPercent 0 to 100
   * @return pascals, 0 or more
   */
  public static double deficitPascal(double celsius, double relativeHumidityPercent) {
    return saturationPascal(celsius) * (1 - relativeHumidityPercent / 100);
  }
}
