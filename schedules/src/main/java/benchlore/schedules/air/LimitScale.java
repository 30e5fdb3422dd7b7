package benchlore.schedules.air;

import benchlore.schedules.material.Solvent;
import benchlore.schedules.quantity.SourcedRange;
import java.util.Optional;

/** What a concentration is measured against. Each is a sum over the solvents of a mixture. */
enum LimitScale {
  /** Parts per million, all solvents together. */
  PPM,
  /** Mixture index: sum of concentration / exposure limit. */
  HEALTH,
  /** Percent of the lower explosive limit, by Le Chatelier's rule: sum of concentration / limit. */
  EXPLOSIVE,
  /** Sum of concentration / level immediately dangerous to life or health. */
  IDLH;

  private static final double PPM_OF_ONE_PERCENT = 10_000;

  /**
   * What one ppm of a solvent adds to this scale.
   *
   * @return empty if the solvent has no published figure for it
   */
  Optional<Double> perPpm(Solvent solvent) {
    return switch (this) {
      case PPM -> Optional.of(1.0);
      case HEALTH -> ExposureLimit.of(solvent).map(limit -> 1 / limit.ppm());
      case EXPLOSIVE ->
          solvent.fire().lowerExplosiveLimit().map(d -> 100 / (d.low() * PPM_OF_ONE_PERCENT));
      case IDLH -> solvent.exposure().idlh().map(SourcedRange::low).map(low -> 1 / low);
    };
  }

  /**
   * What one kg/m3 of a coat's volatile part adds to this scale; a solvent without a figure adds
   * nothing and is told of elsewhere.
   */
  double perKilogramPerCubicMetre(Release release, double celsius) {
    double sum = 0;
    for (Release.Share share : release.shares()) {
      Solvent solvent = share.solvent();
      double ppm = Vapour.ppm(share.massShare(), solvent.molarMass().low(), celsius);
      sum = ppm * perPpm(solvent).orElse(0.0) + sum;
    }
    return sum;
  }
}
