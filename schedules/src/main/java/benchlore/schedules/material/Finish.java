package benchlore.schedules.material;

import java.util.Objects;

/**
 * A generic finish as the engine sees it. Times hold in the reference air and for one coat of the
 * usual wet film; a product's own label always wins.
 *
 * <p>What may stand in each field is said once, in {@link #table()}; an entry that uses a finish
 * refuses figures outside those limits.
 *
 * @param family what it is made of
 * @param role what it is for
 * @param curing what turns it hard
 * @param times how long each stage takes
 * @param air the air those times hold in, and the air it stands while wet
 * @param liquid what is in the tin
 * @param film how coats build up
 * @param use how and where it is put on
 */
public record Finish(
    FinishFamily family,
    FinishRole role,
    Curing curing,
    StatedTimes times,
    AirLimits air,
    Liquid liquid,
    FilmBuild film,
    FinishUse use) {
  /** Refuses nulls. */
  public Finish {
    Objects.requireNonNull(family, "family");
    Objects.requireNonNull(role, "role");
    Objects.requireNonNull(curing, "curing");
    Objects.requireNonNull(times, "times");
    Objects.requireNonNull(air, "air");
    Objects.requireNonNull(liquid, "liquid");
    Objects.requireNonNull(film, "film");
    Objects.requireNonNull(use, "use");
  }

  /** Every field of a finish. */
  public static FieldTable<Finish> table() {
    return FinishFields.TABLE;
  }

  /**
   * Whether a coat is sanded before the next: not where that melts in, goes on before the last is
   * dry, or takes hold at any time.
   */
  public boolean sandedBetweenCoats() {
    return film.bond() == CoatBond.WITHIN_WINDOW || film.bond() == CoatBond.SCUFF_ALWAYS;
  }

  /** The mechanism that governs drying up to handling. */
  public DryingMechanism dryingMechanism() {
    return curing.mechanisms().get(0);
  }

  /** The mechanism that governs full cure. */
  public DryingMechanism cureMechanism() {
    return curing.mechanisms().get(curing.mechanisms().size() - 1);
  }
}
