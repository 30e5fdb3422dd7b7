package benchlore.schedules.material;

import benchlore.schedules.quantity.Numeric;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;
import java.util.Optional;

/**
 * A solvent as the air rules need it. A figure that is not published stays empty; the rules then
 * say so and never put a number in its place.
 *
 * @param id short stable name in kebab case: "mineral-spirits"
 * @param molarMass kg/mol
 * @param density of the liquid, kg/m3
 * @param boilingPoint deg C
 * @param flashPoint closed cup, deg C
 * @param lowerExplosiveLimit percent of vapour in air by volume
 * @param upperExplosiveLimit percent of vapour in air by volume
 * @param vapourPressure Pa at 20 deg C
 * @param oshaLimit OSHA permissible exposure limit, 8-hour average, ppm
 * @param nioshLimit NIOSH recommended exposure limit, up to 10-hour average, ppm
 * @param idlh immediately dangerous to life or health, ppm
 * @param evaporationRate relative to n-butyl acetate = 1
 * @param refusedAtHome true if the engine gives no plan with it in a home shop
 */
public record Solvent(
    String id,
    SourcedRange molarMass,
    SourcedRange density,
    Optional<SourcedRange> boilingPoint,
    Optional<SourcedRange> flashPoint,
    Optional<SourcedRange> lowerExplosiveLimit,
    Optional<SourcedRange> upperExplosiveLimit,
    Optional<SourcedRange> vapourPressure,
    Optional<SourcedRange> oshaLimit,
    Optional<SourcedRange> nioshLimit,
    Optional<SourcedRange> idlh,
    Optional<SourcedRange> evaporationRate,
    boolean refusedAtHome) {
  /** Refuses nulls, an empty id and figures in the wrong unit or not above zero. */
  public Solvent {
    if (id == null || id.isEmpty()) {
      throw new IllegalArgumentException("id must not be empty");
    }
    positive("molarMass", Optional.of(molarMass), Unit.KILOGRAM_PER_MOLE);
    positive("density", Optional.of(density), Unit.KILOGRAM_PER_CUBIC_METRE);
    inUnit("boilingPoint", boilingPoint, Unit.CELSIUS);
    inUnit("flashPoint", flashPoint, Unit.CELSIUS);
    positive("lowerExplosiveLimit", lowerExplosiveLimit, Unit.PERCENT);
    positive("upperExplosiveLimit", upperExplosiveLimit, Unit.PERCENT);
    positive("vapourPressure", vapourPressure, Unit.PASCAL);
    positive("oshaLimit", oshaLimit, Unit.PPM);
    positive("nioshLimit", nioshLimit, Unit.PPM);
    positive("idlh", idlh, Unit.PPM);
    positive("evaporationRate", evaporationRate, Unit.RATIO);
  }

  private static void positive(String name, Optional<SourcedRange> datum, Unit unit) {
    inUnit(name, datum, unit);
    if (datum.isPresent() && !(datum.get().low() > 0)) {
      throw new IllegalArgumentException(
          name + " must be above zero: " + Numeric.text(datum.get().low()));
    }
  }

  private static void inUnit(String name, Optional<SourcedRange> datum, Unit unit) {
    if (datum.isPresent() && datum.get().unit() != unit) {
      throw new IllegalArgumentException(name + " must be in " + unit + ": " + datum.get().unit());
    }
  }
}
