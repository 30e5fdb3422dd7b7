package benchlore.schedules.sanding;

import benchlore.schedules.numeric.Numeric;

/**
 * What is being sanded, reduced to the factors of the removal model.
 *
 * @param areaSquareMetre area of a pass
 * @param easeFactor removal rate against wood of the reference hardness
 * @param lifeFactor share of the usual disc life
 * @param scratchShare scratch depth as a share of grain size
 */
record Stock(double areaSquareMetre, double easeFactor, double lifeFactor, double scratchShare) {

  static Stock wood(SandingWood wood, double areaSquareMetre, boolean overFilm) {
    double relative = SandingRules.REFERENCE_HARDNESS.low() / wood.hardnessNewton();
    boolean clogs = wood.resinous() || overFilm;
    return new Stock(
        areaSquareMetre,
        Numeric.pow(relative, SandingRules.HARDNESS_POWER.low()),
        clogs ? SandingRules.CLOGGED_LIFE.low() : 1,
        SandingRules.SCRATCH_SHARE.low());
  }

  /** Cured film, cut like wood of the reference hardness, with paper kept clean or wet. */
  static Stock film(double areaSquareMetre) {
    return new Stock(areaSquareMetre, 1, 1, SandingRules.FILM_SCRATCH_SHARE.low());
  }

  /** Depth of the scratches a grade leaves, micrometres. */
  double scratchMicron(Grit grit) {
    return scratchShare * grit.micron();
  }
}
