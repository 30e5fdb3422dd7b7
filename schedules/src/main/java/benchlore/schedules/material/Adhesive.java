package benchlore.schedules.material;

import benchlore.schedules.quantity.SourcedRange;
import java.util.Optional;

/**
 * What is known of one type of adhesive. Every figure keeps its range and where it comes from; the
 * rule that uses one takes the safer end. Figures are checked in {@code GlueUp.plan}, which refuses
 * those outside the ranges given here.
 *
 * @param family what kind of adhesive it is
 * @param setting what makes it set
 * @param waterBased true if it carries water into the wood, which swells the joint
 * @param openTime seconds from the first spread until the parts must touch, above 0 s to 7 days, in
 *     air at {@code referenceCelsius}
 * @param closedTime seconds from touching until full pressure must be on; absent: the engine's rule
 * @param clampTime seconds under pressure, 0 s (contact adhesive) to 7 days
 * @param handleAfter seconds from pressing until the joint takes gentle handling
 * @param fullStrength seconds from pressing until the joint takes its full load, to 60 days
 * @param machineAfter seconds from pressing until planing or routing; absent: the engine's rule by
 *     {@code waterBased}
 * @param referenceCelsius air temperature the durations hold for, 0 to 80 deg C
 * @param minimumCelsius below this it does not bond: air, wood and adhesive; -20 to 80 deg C
 * @param maximumCelsius above this it must not be used; absent: none stated
 * @param spread kg/m2 for one glue line, 0.02 to 1
 * @param density kg/m3 of the liquid, 600 to 2200
 * @param pressureSoftwood pressure on woods of low density, Pa, 0 to 3e6
 * @param pressureMedium pressure on woods of medium density, Pa
 * @param pressureHardwood pressure on woods of high density, Pa
 * @param maximumGapMetre thickest glue line that still holds, m, 0 to 0.01
 * @param rateQ10 how many times faster it sets for each 10 deg C; absent: by {@code setting}
 * @param potLife seconds a mixed batch stays usable; absent: not mixed
 * @param oilyWoods how it takes to oily or resinous wood
 * @param waterResistance how much water the set joint stands
 * @param creeps true if the set joint slowly gives under steady load
 */
public record Adhesive(
    Family family,
    Setting setting,
    boolean waterBased,
    SourcedRange openTime,
    Optional<SourcedRange> closedTime,
    SourcedRange clampTime,
    SourcedRange handleAfter,
    SourcedRange fullStrength,
    Optional<SourcedRange> machineAfter,
    SourcedRange referenceCelsius,
    SourcedRange minimumCelsius,
    Optional<SourcedRange> maximumCelsius,
    SourcedRange spread,
    SourcedRange density,
    SourcedRange pressureSoftwood,
    SourcedRange pressureMedium,
    SourcedRange pressureHardwood,
    SourcedRange maximumGapMetre,
    Optional<SourcedRange> rateQ10,
    Optional<SourcedRange> potLife,
    OilyWoods oilyWoods,
    WaterResistance waterResistance,
    boolean creeps) {
  /** What kind of adhesive. */
  public enum Family {
    /** White polyvinyl acetate. */
    PVA_WHITE,
    /** Yellow (aliphatic-type) polyvinyl acetate. */
    PVA_YELLOW,
    /** Polyvinyl acetate that crosslinks as it dries. */
    PVA_CROSSLINKING,
    /** Hide glue kept liquid with urea or salt. */
    LIQUID_HIDE,
    /** Hide glue used hot. */
    HOT_HIDE,
    /** Fish glue. */
    FISH,
    /** Casein. */
    CASEIN,
    /** Urea formaldehyde. */
    UREA_FORMALDEHYDE,
    /** Resorcinol formaldehyde, also with phenol. */
    RESORCINOL,
    /** One-part polyurethane, sets by moisture and foams. */
    POLYURETHANE_ONE_PART,
    /** Two-part epoxy. */
    EPOXY,
    /** Cyanoacrylate. */
    CYANOACRYLATE,
    /** Contact adhesive, both faces dried before they touch. */
    CONTACT,
    /** Hot melt. */
    HOT_MELT,
    /** Gap-filling construction adhesive. */
    CONSTRUCTION
  }

  /** What makes it set. */
  public enum Setting {
    /** Water goes into the wood and the air. */
    WATER_LOSS,
    /** Two parts, or a resin and its hardener, react. */
    REACTION,
    /** Moisture of the wood and air reacts with it. */
    MOISTURE_REACTION,
    /** It stiffens as it cools. */
    COOLING,
    /** Solvent leaves it. */
    SOLVENT_LOSS
  }

  /** How it takes to oily or resinous wood. */
  public enum OilyWoods {
    /** Bonds without more than a fresh surface. */
    FINE,
    /** Bonds if the wood is wiped or abraded just before. */
    WITH_CARE,
    /** Not to be relied on. */
    AVOID
  }

  /** How much water the set joint stands, least first. */
  public enum WaterResistance {
    /** Keeps dry only. */
    NONE,
    /** Spills wiped up. */
    SPLASH,
    /** Rain and wetting that dries again. */
    WET,
    /** Under water. */
    IMMERSION
  }

  /** Refuses nulls. */
  public Adhesive {
    requireAll(
        new Object[] {
          family, setting, openTime, closedTime, clampTime, handleAfter, fullStrength, machineAfter
        },
        "family, setting, openTime, closedTime, clampTime, handleAfter, fullStrength, machineAfter");
    requireAll(
        new Object[] {
          referenceCelsius, minimumCelsius, maximumCelsius, spread, density, maximumGapMetre
        },
        "referenceCelsius, minimumCelsius, maximumCelsius, spread, density, maximumGapMetre");
    requireAll(
        new Object[] {
          pressureSoftwood, pressureMedium, pressureHardwood, rateQ10, potLife, oilyWoods
        },
        "pressureSoftwood, pressureMedium, pressureHardwood, rateQ10, potLife, oilyWoods");
    requireAll(new Object[] {waterResistance}, "waterResistance");
  }

  private static void requireAll(Object[] parts, String names) {
    for (Object part : parts) {
      if (part == null) {
        throw new NullPointerException(names);
      }
    }
  }
}
