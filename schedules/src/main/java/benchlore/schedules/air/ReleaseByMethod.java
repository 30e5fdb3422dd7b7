package benchlore.schedules.air;

import benchlore.schedules.material.ApplicationMethod;
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

  /**
   * The release by a method; the tail is {@value #SLOW_TAIL} times as long where the slowest
   * solvent evaporates below {@value #SLOW_BELOW} of n-butyl acetate or its rate is not known. The
   * quick share stays, so that neither the peak nor the wait is understated.
   *
   * @param slowestEvaporation relative to n-butyl acetate; 0 for not known
   */
  static ReleaseCurve of(ApplicationMethod method, double slowestEvaporation) {
    ReleaseCurve usual = of(method);
    double tail = slowestEvaporation >= SLOW_BELOW ? 1 : SLOW_TAIL;
    return new ReleaseCurve(usual.quickShare(), usual.quickSecond(), usual.decaySecond() * tail);
  }
}
