package benchlore.schedules.sanding;

import benchlore.schedules.quantity.Numeric;

/**
 * What is being sanded, reduced to the factors of the removal model.
 *
 * @param areaSquareMetre area of a pass
 * @param easeFactor removal rate against wood of the reference hardness
 * @param lifeFactor share of the usual disc life
 * @param scratchShare scratch depth as a share of grain size
 * @param bareWood true for wood, false for a film that is rubbed out
 * @param handlingSeconds to take up and set down every piece but the first, each pass
 */
record SandedStock(
    double areaSquareMetre,
    double easeFactor,
    double lifeFactor,
    double scratchShare,
    boolean bareWood,
    double handlingSeconds) {

  static SandedStock wood(SandingWood wood, double areaSquareMetre, boolean overFilm) {
    double relative = SandingFigures.REFERENCE_HARDNESS.low() / wood.hardnessNewton();
    boolean clogs = wood.resinous() || overFilm;
    return new SandedStock(
        areaSquareMetre,
        Numeric.pow(relative, SandingFigures.HARDNESS_POWER.low()),
        clogs ? SandingFigures.CLOGGED_LIFE.low() : 1,
        SandingFigures.SCRATCH_SHARE.low(),
        true,
        0);
  }

  /** Cured film, cut like wood of the reference hardness, with paper kept clean or wet. */
  static SandedStock film(double areaSquareMetre) {
    return new SandedStock(
        areaSquareMetre, 1, 1, SandingFigures.FILM_SCRATCH_SHARE.low(), false, 0);
  }

  /**
   * The same in pieces. The first is handled in the time that a change of grade takes.
   *
   * @param faces how often each is turned or clamped in one pass
   */
  SandedStock inPieces(int pieces, int faces) {
    double handling = SandingFigures.HANDLING.low() * faces * (pieces - 1);
    return new SandedStock(
        areaSquareMetre, easeFactor, lifeFactor, scratchShare, bareWood, handling);
  }

  /** Depth of the scratches a grade leaves, micrometres. */
  double scratchMicron(Grit grit) {
    return scratchShare * grit.micron();
  }
}
