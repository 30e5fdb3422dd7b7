package benchlore.schedules.material;

import benchlore.schedules.quantity.SourcedRange;
import java.util.Objects;
import java.util.Optional;

/**
 * A solvent as the air rules need it. A figure that is not published stays empty; the rules then
 * say so and never put a number in its place. What may stand in each field is said once, in {@link
 * #table()}.
 *
 * @param id short stable name in kebab case: "mineral-spirits"
 * @param molarMass kg/mol
 * @param density of the liquid, kg/m3
 * @param volatility how readily it evaporates
 * @param fire how readily it burns
 * @param exposure how much of it may be breathed
 * @param refusedAtHome true if the engine gives no plan with it in a home shop
 */
public record Solvent(
    String id,
    SourcedRange molarMass,
    SourcedRange density,
    Volatility volatility,
    Fire fire,
    Exposure exposure,
    boolean refusedAtHome) {
  /**
   * How readily it evaporates.
   *
   * @param boilingPoint deg C
   * @param vapourPressure Pa at 20 deg C
   * @param evaporationRate relative to n-butyl acetate = 1
   */
  public record Volatility(
      Optional<SourcedRange> boilingPoint,
      Optional<SourcedRange> vapourPressure,
      Optional<SourcedRange> evaporationRate) {
    /** Refuses nulls and figures outside the limits of their fields. */
    public Volatility {
      SolventFields.BOILING_POINT.require(boilingPoint);
      SolventFields.VAPOUR_PRESSURE.require(vapourPressure);
      SolventFields.EVAPORATION_RATE.require(evaporationRate);
    }
  }

  /**
   * How readily it burns.
   *
   * @param flashPoint closed cup, deg C
   * @param lowerExplosiveLimit percent of vapour in air by volume
   * @param upperExplosiveLimit percent of vapour in air by volume
   */
  public record Fire(
      Optional<SourcedRange> flashPoint,
      Optional<SourcedRange> lowerExplosiveLimit,
      Optional<SourcedRange> upperExplosiveLimit) {
    /** Refuses nulls and figures outside the limits of their fields. */
    public Fire {
      SolventFields.FLASH_POINT.require(flashPoint);
      SolventFields.LOWER_EXPLOSIVE_LIMIT.require(lowerExplosiveLimit);
      SolventFields.UPPER_EXPLOSIVE_LIMIT.require(upperExplosiveLimit);
    }
  }

  /**
   * How much of it may be breathed.
   *
   * @param oshaPel OSHA permissible exposure limit, 8-hour average, ppm
   * @param nioshRel NIOSH recommended exposure limit, up to 10-hour average, ppm
   * @param shortTerm limit on the average of any 15 minutes, ppm
   * @param ceiling not to be passed at any moment, ppm
   * @param idlh immediately dangerous to life or health, ppm
   */
  public record Exposure(
      Optional<SourcedRange> oshaPel,
      Optional<SourcedRange> nioshRel,
      Optional<SourcedRange> shortTerm,
      Optional<SourcedRange> ceiling,
      Optional<SourcedRange> idlh) {
    /** Refuses nulls and figures outside the limits of their fields. */
    public Exposure {
      SolventFields.OSHA_PEL.require(oshaPel);
      SolventFields.NIOSH_REL.require(nioshRel);
      SolventFields.SHORT_TERM.require(shortTerm);
      SolventFields.CEILING.require(ceiling);
      SolventFields.IDLH.require(idlh);
    }
  }

  /** Refuses nulls, an empty id and a figure outside the limits of its field. */
  public Solvent {
    Objects.requireNonNull(id, "id");
    if (id.isEmpty()) {
      throw new IllegalArgumentException("id must not be empty");
    }
    SolventFields.MOLAR_MASS.require(molarMass);
    SolventFields.DENSITY.require(density);
    Objects.requireNonNull(volatility, "volatility");
    Objects.requireNonNull(fire, "fire");
    Objects.requireNonNull(exposure, "exposure");
  }

  /** Every field of a solvent. */
  public static FieldTable<Solvent> table() {
    return SolventFields.TABLE;
  }
}
