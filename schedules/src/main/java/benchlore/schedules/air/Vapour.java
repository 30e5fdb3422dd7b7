package benchlore.schedules.air;

import benchlore.schedules.quantity.Numeric;

/**
 * Vapour in air: parts per million by volume and mass in a cubic metre.
 *
 * <pre>
 * molar volume = R (T + 273.15) / P;   ppm = 1e6 x concentration / molar mass x molar volume
 * </pre>
 *
 * <p>Ideal gas at one standard atmosphere; for thin vapours within 1 % from -20 to 60 deg C. At 25
 * deg C the molar volume is the 24.45 or 24.47 L/mol of the hygiene handbooks. High ground has
 * thinner air: at 1500 m the true ppm is a fifth higher than here. Sources: gas constant from the
 * 2019 SI; the conversion is that of national fact sheets on converting exposure limits.
 */
final class Vapour {
  private static final double GAS_CONSTANT = 8.314462618;
  private static final double STANDARD_PASCAL = 101_325;
  private static final double KELVIN_AT_ZERO = 273.15;

  private Vapour() {}

  /**
   * Volume of one mole of gas.
   *
   * @param celsius air temperature, above -273
   * @return m3/mol, 0.02406 at 20 deg C
   */
  static double molarVolume(double celsius) {
    return GAS_CONSTANT * (celsius + KELVIN_AT_ZERO) / STANDARD_PASCAL;
  }

  /**
   * Parts per million from a mass concentration.
   *
   * @param kilogramPerCubicMetre vapour in air
   * @param molarMass kg/mol, above 0
   * @param celsius air temperature
   * @return ppm by volume
   */
  static double ppm(double kilogramPerCubicMetre, double molarMass, double celsius) {
    return molarVolume(celsius) * 1e6 * kilogramPerCubicMetre / molarMass;
  }

  /**
   * Mass concentration from parts per million; undoes {@link #ppm}.
   *
   * @param ppm by volume
   * @param molarMass kg/mol
   * @param celsius air temperature
   * @return kg/m3; multiply by a million for mg/m3
   */
  static double kilogramPerCubicMetre(double ppm, double molarMass, double celsius) {
    return ppm * molarMass / molarVolume(celsius) / 1e6;
  }

  /**
   * Part of the way from one concentration to another that a ventilated room needs, as a time.
   *
   * @param fromPpm above 0
   * @param toPpm above 0, not above {@code fromPpm}
   * @param effectiveChangesPerSecond air flow / mixing factor / volume, above 0
   * @return seconds: ln(from / to) / changes
   */
  static double clearanceSecond(double fromPpm, double toPpm, double effectiveChangesPerSecond) {
    return Numeric.log(fromPpm / toPpm) / effectiveChangesPerSecond;
  }
}
