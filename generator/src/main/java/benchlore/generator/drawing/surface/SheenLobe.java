package benchlore.generator.drawing.surface;

/**
 * How wide a film spreads the light it mirrors, worked back from its gloss reading.
 *
 * <pre>
 * idea     a gloss meter counts the light that falls into its receiver; a duller film throws the
 *          same light wider, so less of it falls in
 * formula  G / Gs = erf(a / (s sqrt 2)) erf(b / (s sqrt 2)), solved for s by halving
 *          G   gloss units at 60 degrees
 *          Gs  reading of a perfectly smooth clear film, 95 (index about 1.54; glass of 1.567 is 100)
 *          a,b half the receiver's opening, 2.2 and 5.85 degrees
 *          s   standard deviation of the spread, degrees, the same in every direction
 * valid    0.5 to 100 GU; from Gs up the film is a mirror, s = 0
 * source   glass of index 1.567 as 100: ISO 2813:1997; openings, Gs and the bell shape from memory
 * error    a flatted film has a sharp core in a wide halo: this rule draws the average of both
 * </pre>
 */
final class SheenLobe {
  static final double SMOOTH_GU = 95;
  private static final double HALF_OPENING = 2.2;
  private static final double HALF_OPENING_ACROSS = 5.85;
  private static final double WIDEST = 45;
  private static final int HALVINGS = 40;

  private SheenLobe() {}

  /** Degrees. */
  static double spread(double glossUnits) {
    double caught = glossUnits / SMOOTH_GU;
    if (caught >= 1) {
      return 0;
    }
    double narrow = 0;
    double wide = WIDEST;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (narrow + wide) / 2;
      if (caught(middle) > caught) {
        narrow = middle;
      } else {
        wide = middle;
      }
    }
    return wide;
  }

  /** Share of the mirrored light that falls into the receiver. */
  static double caught(double spread) {
    return within(HALF_OPENING, spread) * within(HALF_OPENING_ACROSS, spread);
  }

  private static double within(double half, double spread) {
    return 2 * below(half / spread) - 1;
  }

  /**
   * Share of a bell curve below {@code x} standard deviations (Abramowitz and Stegun 26.2.17, error
   * under 0.0000001).
   */
  static double below(double x) {
    double t = 1 / (1 + 0.2316419 * Math.abs(x));
    double series =
        t
            * (0.319381530
                + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
    double tail = series * Math.exp(-x * x / 2) / Math.sqrt(2 * Math.PI);
    return x >= 0 ? 1 - tail : tail;
  }
}
