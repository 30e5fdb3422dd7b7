package benchlore.schedules.cutting;

/**
 * Highest and starting speed by the largest diameter of the bit.
 *
 * <p>Charts disagree by half; the most cautious one is taken. What is marked on the bit or its
 * packet wins wherever it is lower. The starting speeds come from another page whose rim-speed
 * column doesn't agree with its own speeds; only the speeds are used, and they lie under the chart.
 * Rim speed = pi x diameter x rpm / 60 stays under 48 m/s.
 */
final class BitSpeeds {
  /** Largest diameter any chart covers, metres (3 1/2 in). */
  static final double MOST_DIAMETER_METRE = 0.0889;

  private static final double INCH = 0.0254;

  // Diameter up to and including, inches; highest rpm.
  private static final double[][] HIGHEST = {{1, 24_000}, {2, 18_000}, {3, 12_000}, {3.5, 10_000}};

  // Diameter up to and including, inches; rpm to start at.
  private static final double[][] START = {
    {0.25, 24_000},
    {0.5, 22_000},
    {0.75, 18_000},
    {1, 16_000},
    {1.25, 14_000},
    {1.5, 12_000},
    {2, 10_000},
    {2.5, 9_000},
    {3.5, 8_000}
  };

  private BitSpeeds() {}

  /** Highest rpm by the chart alone; NaN above the largest diameter. */
  static double highestRpm(double diameterMetre) {
    return lookUp(HIGHEST, diameterMetre);
  }

  /** Rpm to start at; NaN above the largest diameter. */
  static double startRpm(double diameterMetre) {
    return lookUp(START, diameterMetre);
  }

  static double rimMetrePerSecond(double diameterMetre, double rpm) {
    return RimSpeed.metrePerSecond(diameterMetre, rpm);
  }

  private static double lookUp(double[][] chart, double diameterMetre) {
    double inches = diameterMetre / INCH - 1e-9;
    for (double[] row : chart) {
      if (inches <= row[0]) {
        return row[1];
      }
    }
    return Double.NaN;
  }
}
