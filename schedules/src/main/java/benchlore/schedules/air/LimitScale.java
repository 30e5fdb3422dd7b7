package benchlore.schedules.air;

import benchlore.schedules.material.Solvent;
import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.SourcedRange;
import java.util.Optional;

/** What a concentration is measured against. Each is a sum over the solvents of a mixture. */
enum LimitScale {
  /** Parts per million, all solvents together. */
  PPM,
  /** Mixture index: sum of concentration / limit for the average of 8 hours. */
  HEALTH,
  /**
   * Mixture index of a quarter of an hour: sum of concentration / limit for 15 minutes; where none
   * is published, {@value #EXCURSION} times the 8-hour limit.
   */
  QUARTER_HOUR,
  /** Mixture index of a moment: sum of concentration / ceiling, over the solvents that have one. */
  CEILING,
  /** Percent of the lower explosive limit, by Le Chatelier's rule: sum of concentration / limit. */
  EXPLOSIVE,
  /** Sum of concentration / level immediately dangerous to life or health. */
  IDLH;

  private static final double PPM_OF_ONE_PERCENT = 10_000;

  /** How far short spells may go where no short-term limit is published. */
  static final double EXCURSION = 3;

  /** Where that factor comes from. */
  static final Provenance EXCURSION_FROM =
      Provenance.commonPractice(
          "hygienists' rule for spells without a limit of their own: at most 3 times the 8-hour"
              + " limit over 15 minutes");

  /**
   * What one ppm of a solvent adds to this scale.
   *
   * @return empty if the solvent has no published figure for it
   */
  Optional<Double> perPpm(Solvent solvent) {
    return switch (this) {
      case PPM -> Optional.of(1.0);
      case HEALTH -> ExposureLimit.of(solvent).map(limit -> 1 / limit.ppm());
      case QUARTER_HOUR ->
          solvent
              .exposure()
              .shortTerm()
              .map(d -> 1 / d.low())
              .or(() -> ExposureLimit.of(solvent).map(limit -> 1 / (EXCURSION * limit.ppm())));
      case CEILING -> solvent.exposure().ceiling().map(d -> 1 / d.low());
      case EXPLOSIVE ->
          solvent.fire().lowerExplosiveLimit().map(d -> 100 / (d.low() * PPM_OF_ONE_PERCENT));
      case IDLH -> solvent.exposure().idlh().map(SourcedRange::low).map(low -> 1 / low);
    };
  }

  /**
   * What one kg/m3 of a solvent adds to this scale; one without a figure adds nothing and is told
   * of elsewhere.
   */
  double perKilogramPerCubicMetre(Solvent solvent, double celsius) {
    return Vapour.ppm(1, solvent.molarMass().low(), celsius) * perPpm(solvent).orElse(0.0);
  }
}
