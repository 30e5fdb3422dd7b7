package benchlore.schedules.air;

import benchlore.schedules.answer.Provenance;

/**
 * How a coat is put on, with the release to expect where the maker gives none. The figures are
 * rough on purpose: the quick share is taken high, so that the peak is not understated.
 */
public enum ApplyMethod {
  /** By brush. */
  BRUSH(0.5, 900, 3600),
  /** By cloth, thin film. */
  WIPE(0.7, 600, 2700),
  /** By pad applicator. */
  PAD(0.6, 600, 3000),
  /** By roller. */
  ROLLER(0.5, 900, 3600),
  /** Flooded on and wiped off. */
  FLOOD(0.5, 900, 5400),
  /** By spray gun: the cloud evaporates before it lands. */
  SPRAY(0.8, 600, 1800);

  /** Where the default curves come from. */
  static final Provenance FROM =
      Provenance.fromMemory("release of thin solvent films by method; no measured table seen");

  private static final double SLOW_BELOW = 0.8;
  private static final double SLOW_TAIL = 3;

  private final double quickShare;
  private final double quickSecond;
  private final double decaySecond;

  ApplyMethod(double quickShare, double quickSecond, double decaySecond) {
    this.quickShare = quickShare;
    this.quickSecond = quickSecond;
    this.decaySecond = decaySecond;
  }

  /** The release of a solvent that evaporates at a middling or fast rate. */
  public ReleaseCurve curve() {
    return new ReleaseCurve(quickShare, quickSecond, decaySecond);
  }

  /**
   * The release by this method; the tail is {@value #SLOW_TAIL} times as long where the slowest
   * solvent evaporates below {@value #SLOW_BELOW} of n-butyl acetate or its rate is not known. The
   * quick share stays, so that neither the peak nor the wait is understated.
   *
   * @param slowestEvaporation relative to n-butyl acetate; 0 for not known
   */
  ReleaseCurve curveFor(double slowestEvaporation) {
    double tail = slowestEvaporation >= SLOW_BELOW ? 1 : SLOW_TAIL;
    return new ReleaseCurve(quickShare, quickSecond, decaySecond * tail);
  }
}
