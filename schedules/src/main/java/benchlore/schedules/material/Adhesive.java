package benchlore.schedules.material;

import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;
import java.util.Objects;
import java.util.Optional;

/**
 * What is known of one type of adhesive. Every figure keeps its range and where it comes from; the
 * rule that uses one takes the safer end. What may stand in each field is said once, in {@link
 * #table()}; {@code GlueUp.plan} refuses figures outside those limits.
 *
 * @param family what kind of adhesive it is
 * @param setting what makes it set
 * @param waterBased true if it carries water into the wood, which swells the joint
 * @param times how long each stage takes
 * @param air the air those times hold in, and the air it bonds in
 * @param line the glue line it wants
 * @param bond what the set joint stands
 * @param spreading how it is spread
 */
public record Adhesive(
    Family family,
    Setting setting,
    boolean waterBased,
    Times times,
    Air air,
    Line line,
    Bond bond,
    Spreading spreading) {
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

  /**
   * How long each stage takes in air at the reference temperature.
   *
   * @param openTime seconds from the first spread until the parts must touch
   * @param closedTime seconds from touching until full pressure must be on; absent: the engine's
   *     rule
   * @param clampTime seconds under pressure, 0 s for contact adhesive
   * @param handleAfter seconds from pressing until the joint takes gentle handling
   * @param fullStrength seconds from pressing until the joint takes its full load
   * @param machineAfter seconds from pressing until planing or routing; absent: the engine's rule
   *     by whether it is water-based
   * @param potLife seconds a mixed batch stays usable; absent: not mixed
   */
  public record Times(
      SourcedRange openTime,
      Optional<SourcedRange> closedTime,
      SourcedRange clampTime,
      SourcedRange handleAfter,
      SourcedRange fullStrength,
      Optional<SourcedRange> machineAfter,
      Optional<SourcedRange> potLife) {
    /** Refuses nulls. */
    public Times {
      Objects.requireNonNull(openTime, "openTime");
      Objects.requireNonNull(closedTime, "closedTime");
      Objects.requireNonNull(clampTime, "clampTime");
      Objects.requireNonNull(handleAfter, "handleAfter");
      Objects.requireNonNull(fullStrength, "fullStrength");
      Objects.requireNonNull(machineAfter, "machineAfter");
      Objects.requireNonNull(potLife, "potLife");
    }
  }

  /**
   * The air its times hold in, and the air it bonds in.
   *
   * @param referenceTemperature air temperature the times hold for, deg C
   * @param minimumTemperature below this it does not bond: air, wood and adhesive; deg C
   * @param maximumTemperature above this it must not be used; absent: none stated; deg C
   * @param speed how much faster it sets when warmer
   * @param wood how damp the wood may be
   */
  public record Air(
      SourcedRange referenceTemperature,
      SourcedRange minimumTemperature,
      Optional<SourcedRange> maximumTemperature,
      Speed speed,
      WoodMoisture wood) {
    /** Refuses nulls. */
    public Air {
      Objects.requireNonNull(referenceTemperature, "referenceTemperature");
      Objects.requireNonNull(minimumTemperature, "minimumTemperature");
      Objects.requireNonNull(maximumTemperature, "maximumTemperature");
      Objects.requireNonNull(speed, "speed");
      Objects.requireNonNull(wood, "wood");
    }

    /** An adhesive that states a factor for ten degrees or none, and nothing of damp wood. */
    public Air(
        SourcedRange referenceTemperature,
        SourcedRange minimumTemperature,
        Optional<SourcedRange> maximumTemperature,
        Optional<SourcedRange> rateQ10) {
      this(
          referenceTemperature,
          minimumTemperature,
          maximumTemperature,
          new Speed(rateQ10, Optional.empty(), Optional.empty(), Optional.empty()),
          WoodMoisture.UNSTATED);
    }
  }

  /**
   * How much faster it sets when warmer: at most one of the first three; none: by what makes it
   * set.
   *
   * @param rateQ10 how many times faster for each 10 deg C
   * @param rateActivationEnergy apparent activation energy, J/mol: the Arrhenius rule
   * @param rateDatum where setting stops, deg C: the Nurse-Saul rule
   * @param potRateQ10 how many times faster a mixed batch goes off in the pot for each 10 deg C;
   *     absent: as the film does
   */
  public record Speed(
      Optional<SourcedRange> rateQ10,
      Optional<SourcedRange> rateActivationEnergy,
      Optional<SourcedRange> rateDatum,
      Optional<SourcedRange> potRateQ10) {
    /** Refuses nulls. */
    public Speed {
      Objects.requireNonNull(rateQ10, "rateQ10");
      Objects.requireNonNull(rateActivationEnergy, "rateActivationEnergy");
      Objects.requireNonNull(rateDatum, "rateDatum");
      Objects.requireNonNull(potRateQ10, "potRateQ10");
    }
  }

  /**
   * How damp the wood may be, percent by meter.
   *
   * @param leastWoodMoisture drier than its high end it wants a wipe with water or sets badly;
   *     absent: none stated
   * @param mostWoodMoisture above its low end with care, above its high end not at all; absent: the
   *     engine's usual limits
   */
  public record WoodMoisture(
      Optional<SourcedRange> leastWoodMoisture, Optional<SourcedRange> mostWoodMoisture) {
    /** Nothing stated. */
    public static final WoodMoisture UNSTATED =
        new WoodMoisture(Optional.empty(), Optional.empty());

    /** Refuses nulls. */
    public WoodMoisture {
      Objects.requireNonNull(leastWoodMoisture, "leastWoodMoisture");
      Objects.requireNonNull(mostWoodMoisture, "mostWoodMoisture");
    }
  }

  /**
   * The glue line it wants.
   *
   * @param spread kg/m2 for one glue line
   * @param density kg/m3 of the liquid
   * @param pressureSoftwood pressure on woods of low density, Pa
   * @param pressureMedium pressure on woods of medium density, Pa
   * @param pressureHardwood pressure on woods of high density, Pa
   * @param maximumGap thickest glue line that still holds, m
   */
  public record Line(
      SourcedRange spread,
      SourcedRange density,
      SourcedRange pressureSoftwood,
      SourcedRange pressureMedium,
      SourcedRange pressureHardwood,
      SourcedRange maximumGap) {
    /** Refuses nulls. */
    public Line {
      Objects.requireNonNull(spread, "spread");
      Objects.requireNonNull(density, "density");
      Objects.requireNonNull(pressureSoftwood, "pressureSoftwood");
      Objects.requireNonNull(pressureMedium, "pressureMedium");
      Objects.requireNonNull(pressureHardwood, "pressureHardwood");
      Objects.requireNonNull(maximumGap, "maximumGap");
    }
  }

  /**
   * What the set joint stands.
   *
   * @param oilyWoods how it takes to oily or resinous wood
   * @param waterResistance how much water the set joint stands
   * @param creeps true if the set joint slowly gives under steady load
   */
  public record Bond(OilyWoods oilyWoods, WaterResistance waterResistance, boolean creeps) {
    /** Refuses nulls. */
    public Bond {
      Objects.requireNonNull(oilyWoods, "oilyWoods");
      Objects.requireNonNull(waterResistance, "waterResistance");
    }
  }

  /** In what shape it goes on the wood. */
  public enum Laid {
    /** A bead out of a bottle or cartridge, then spread or pressed out. */
    BEAD,
    /** A film by brush, roller or spreader. */
    FILM,
    /** Spots here and there. */
    SPOTS
  }

  /** Which faces of a joint between long edges are spread. */
  public enum Faces {
    /** One of the two. */
    ONE,
    /** Both. */
    BOTH
  }

  /**
   * How it is spread.
   *
   * @param laid in what shape it goes on
   * @param faces how many faces of a long-grain joint are spread
   * @param how how it is worked
   */
  public record Spreading(Laid laid, Faces faces, Directions how) {
    /** Refuses nulls. */
    public Spreading {
      Objects.requireNonNull(laid, "laid");
      Objects.requireNonNull(faces, "faces");
      Objects.requireNonNull(how, "how");
    }
  }

  /** Refuses nulls. */
  public Adhesive {
    Objects.requireNonNull(family, "family");
    Objects.requireNonNull(setting, "setting");
    Objects.requireNonNull(times, "times");
    Objects.requireNonNull(air, "air");
    Objects.requireNonNull(line, "line");
    Objects.requireNonNull(bond, "bond");
    Objects.requireNonNull(spreading, "spreading");
  }

  /**
   * This adhesive as the label of the one at hand has it, which decides over what makers say in
   * general.
   *
   * @param minimumCelsius the least temperature on the label, -20 to 80
   */
  public Adhesive byLabel(double minimumCelsius) {
    SourcedRange least = SourcedRange.of(minimumCelsius, Unit.CELSIUS, Provenance.input());
    Air labelled =
        new Air(
            air.referenceTemperature(), least, air.maximumTemperature(), air.speed(), air.wood());
    return new Adhesive(family, setting, waterBased, times, labelled, line, bond, spreading);
  }

  /** Every field of an adhesive. */
  public static FieldTable<Adhesive> table() {
    return AdhesiveFields.TABLE;
  }
}
