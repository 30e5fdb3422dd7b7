package benchlore.schedules.air;

import benchlore.schedules.material.ApplicationMethod;
import benchlore.schedules.material.Solvent;
import benchlore.schedules.quantity.Provenance;

/**
 * The release to expect of each way to put a coat on, where the maker gives none. The figures are
 * rough on purpose: the quick share is taken high, so that the peak is not understated.
 */
final class ReleaseByMethod {
  /** Where the curves come from. */
  static final Provenance FROM =
      Provenance.fromMemory("release of thin solvent films by method; no measured table seen");

  private static final ReleaseCurve BRUSH = new ReleaseCurve(0.5, 900, 3600);
  private static final ReleaseCurve WIPE = new ReleaseCurve(0.7, 600, 2700);
  private static final ReleaseCurve PAD = new ReleaseCurve(0.6, 600, 3000);
  private static final ReleaseCurve FLOOD = new ReleaseCurve(0.5, 900, 5400);
  private static final ReleaseCurve SPRAY = new ReleaseCurve(0.8, 600, 1800);

  private static final double SLOW_BELOW = 0.8;
  private static final double SLOW_TAIL = 3;
  private static final double LINGERS_BELOW = 0.1;
  private static final double LINGERING_SHARE = 0.4;
  private static final double LINGERING_TAIL = 6;

  private ReleaseByMethod() {}

  /** The release of a solvent that evaporates at a middling or fast rate. */
  static ReleaseCurve of(ApplicationMethod method) {
    return switch (method) {
      case BRUSH, ROLLER -> BRUSH;
      case WIPE -> WIPE;
      case PAD -> PAD;
      case FLOOD -> FLOOD;
      case SPRAY -> SPRAY;
    };
  }

  /** Whether it evaporates so slowly that little of it is in the air at any moment. */
  static boolean lingers(Solvent solvent) {
    return rate(solvent) < LINGERS_BELOW;
  }

  private static double rate(Solvent solvent) {
    return solvent.volatility().evaporationRate().map(d -> d.low()).orElse(LINGERS_BELOW);
  }

  /**
   * The release of a solvent by a method.
   *
   * <p>Below {@value #SLOW_BELOW} of n-butyl acetate, or where the rate is not known, the tail is
   * {@value #SLOW_TAIL} times as long; the quick share stays, so that neither the peak nor the wait
   * is understated. Below {@value #LINGERS_BELOW} it is one of those that stay in a film for hours
   * to let it melt together: the quick share is {@value #LINGERING_SHARE} of the usual one and the
   * tail {@value #LINGERING_TAIL} times as long.
   */
  static ReleaseCurve of(ApplicationMethod method, Solvent solvent) {
    ReleaseCurve usual = of(method);
    double rate = rate(solvent);
    boolean lingers = lingers(solvent);
    double share = lingers ? LINGERING_SHARE : 1;
    double tail = rate >= SLOW_BELOW ? 1 : lingers ? LINGERING_TAIL : SLOW_TAIL;
    return new ReleaseCurve(
        usual.quickShare() * share, usual.quickSecond(), usual.decaySecond() * tail);
  }
}
