package benchlore.schedules.air;

import benchlore.schedules.quantity.Numeric;

/**
 * The release of one solvent of one coat over time, kg/s.
 *
 * <pre>
 * 0 &lt;= s &lt; F:  g = q M / F            (s = seconds since the start of the coat)
 * s &gt;= F:      g = (1 - q) M / tau x exp(-(s - F) / tau)
 * </pre>
 *
 * @param startSecond start of the coat
 * @param kilogram M, mass of it released in all
 * @param curve q, F and tau
 */
record Emission(double startSecond, double kilogram, ReleaseCurve curve) {
  /** One solvent of a coat. */
  static Emission of(Release release, Release.Share share) {
    return new Emission(
        release.startSecond(),
        release.volatileKilogram() * share.massShare(),
        release.curveOf(share));
  }

  double quickEndSecond() {
    return startSecond + curve.quickSecond();
  }

  /** Release rate at a moment; at a break the rate just after it. */
  double kilogramPerSecond(double second) {
    double since = second - startSecond;
    if (since < 0) {
      return 0;
    }
    if (since < curve.quickSecond()) {
      return curve.quickShare() * kilogram / curve.quickSecond();
    }
    double slow = (1 - curve.quickShare()) * kilogram / curve.decaySecond();
    return slow * Numeric.exp((curve.quickSecond() - since) / curve.decaySecond());
  }

  /** Mass released until a moment. */
  double releasedKilogram(double second) {
    double since = second - startSecond;
    if (since <= 0) {
      return 0;
    }
    if (since < curve.quickSecond()) {
      return curve.quickShare() * kilogram * since / curve.quickSecond();
    }
    double left = Numeric.exp((curve.quickSecond() - since) / curve.decaySecond());
    return kilogram * (1 - (1 - curve.quickShare()) * left);
  }
}
