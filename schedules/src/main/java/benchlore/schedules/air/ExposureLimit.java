package benchlore.schedules.air;

import benchlore.schedules.material.Solvent;
import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.SourcedRange;
import java.util.Objects;
import java.util.Optional;

/**
 * The exposure limit that governs a solvent: the lower of those published.
 *
 * @param solventId which solvent
 * @param ppm the limit, 8-hour average
 * @param body who set it
 * @param from its source, with the date where the record has one
 */
public record ExposureLimit(String solventId, double ppm, Body body, Provenance from) {
  /** Who sets limits. */
  public enum Body {
    /** The US regulator: permissible exposure limit, law in workplaces. */
    OSHA,
    /** The US research institute: recommended exposure limit, advice. */
    NIOSH
  }

  /** Refuses nulls. */
  public ExposureLimit {
    Objects.requireNonNull(solventId, "solventId");
    Objects.requireNonNull(body, "body");
    Objects.requireNonNull(from, "from");
  }

  /**
   * The governing limit.
   *
   * @return empty if none is published
   */
  static Optional<ExposureLimit> of(Solvent solvent) {
    Optional<ExposureLimit> law =
        solvent.exposure().oshaPel().map(datum -> from(solvent, datum, Body.OSHA));
    Optional<ExposureLimit> advice =
        solvent.exposure().nioshRel().map(datum -> from(solvent, datum, Body.NIOSH));
    if (law.isEmpty()) {
      return advice;
    }
    return advice.filter(a -> a.ppm() < law.get().ppm()).or(() -> law);
  }

  private static ExposureLimit from(Solvent solvent, SourcedRange datum, Body body) {
    return new ExposureLimit(solvent.id(), datum.low(), body, datum.from());
  }
}
