package benchlore.schedules.material;

import benchlore.schedules.material.Field.Limits;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;
import java.util.List;
import java.util.Optional;

/** Every field of an adhesive: its key, what may stand there, where the record keeps it. */
final class AdhesiveFields {
  private static final double WEEK = 7 * 86_400.0;
  private static final Limits PRESSURE = new Limits(Unit.PASCAL, 0, 1e7);

  private static final Field<Adhesive, Adhesive.Family> FAMILY =
      Field.word("family", Adhesive.Family.values(), Adhesive::family);
  private static final Field<Adhesive, Adhesive.Setting> SETTING =
      Field.word("setting", Adhesive.Setting.values(), Adhesive::setting);
  private static final Field<Adhesive, Boolean> WATER_BASED =
      Field.flag("water-based", Adhesive::waterBased);
  private static final Field<Adhesive, SourcedRange> OPEN_TIME =
      Field.figure("open-time", new Limits(Unit.SECOND, 1, WEEK), a -> a.times().openTime());
  private static final Field<Adhesive, Optional<SourcedRange>> CLOSED_TIME =
      Field.optional("closed-time", new Limits(Unit.SECOND, 1, WEEK), a -> a.times().closedTime());
  private static final Field<Adhesive, SourcedRange> CLAMP_TIME =
      Field.figure("clamp-time", new Limits(Unit.SECOND, 0, WEEK), a -> a.times().clampTime());
  private static final Field<Adhesive, SourcedRange> HANDLE_AFTER =
      Field.figure(
          "handle-after", new Limits(Unit.SECOND, 0, 4 * WEEK), a -> a.times().handleAfter());
  private static final Field<Adhesive, SourcedRange> FULL_STRENGTH =
      Field.figure(
          "full-strength", new Limits(Unit.SECOND, 0, 10 * WEEK), a -> a.times().fullStrength());
  private static final Field<Adhesive, Optional<SourcedRange>> MACHINE_AFTER =
      Field.optional(
          "machine-after", new Limits(Unit.SECOND, 0, 10 * WEEK), a -> a.times().machineAfter());
  private static final Field<Adhesive, Optional<SourcedRange>> POT_LIFE =
      Field.optional("pot-life", new Limits(Unit.SECOND, 1, WEEK), a -> a.times().potLife());
  private static final Field<Adhesive, SourcedRange> REFERENCE_TEMPERATURE =
      Field.figure(
          "reference-temperature",
          new Limits(Unit.CELSIUS, 0, 80),
          a -> a.air().referenceTemperature());
  private static final Field<Adhesive, SourcedRange> MINIMUM_TEMPERATURE =
      Field.figure(
          "minimum-temperature",
          new Limits(Unit.CELSIUS, -20, 80),
          a -> a.air().minimumTemperature());
  private static final Field<Adhesive, Optional<SourcedRange>> MAXIMUM_TEMPERATURE =
      Field.optional(
          "maximum-temperature",
          new Limits(Unit.CELSIUS, 0, 120),
          a -> a.air().maximumTemperature());
  private static final Field<Adhesive, Optional<SourcedRange>> RATE_Q10 =
      Field.optional("rate-q10", new Limits(Unit.RATIO, 1, 4), a -> a.air().speed().rateQ10());
  private static final Field<Adhesive, Optional<SourcedRange>> RATE_ACTIVATION_ENERGY =
      Field.optional(
          "rate-activation-energy",
          new Limits(Unit.JOULE_PER_MOLE, 0, 200_000),
          a -> a.air().speed().rateActivationEnergy());
  private static final Field<Adhesive, Optional<SourcedRange>> RATE_DATUM =
      Field.optional(
          "rate-datum", new Limits(Unit.CELSIUS, -40, 40), a -> a.air().speed().rateDatum());
  private static final Field<Adhesive, Optional<SourcedRange>> POT_RATE_Q10 =
      Field.optional(
          "pot-rate-q10", new Limits(Unit.RATIO, 1, 4), a -> a.air().speed().potRateQ10());
  private static final Field<Adhesive, Optional<SourcedRange>> LEAST_WOOD_MOISTURE =
      Field.optional(
          "least-wood-moisture",
          new Limits(Unit.PERCENT, 0, 30),
          a -> a.air().wood().leastWoodMoisture());
  private static final Field<Adhesive, Optional<SourcedRange>> MOST_WOOD_MOISTURE =
      Field.optional(
          "most-wood-moisture",
          new Limits(Unit.PERCENT, 0, 60),
          a -> a.air().wood().mostWoodMoisture());
  private static final Field<Adhesive, SourcedRange> SPREAD =
      Field.figure(
          "spread", new Limits(Unit.KILOGRAM_PER_SQUARE_METRE, 0.02, 5), a -> a.line().spread());
  private static final Field<Adhesive, SourcedRange> DENSITY =
      Field.figure(
          "density", new Limits(Unit.KILOGRAM_PER_CUBIC_METRE, 600, 2200), a -> a.line().density());
  private static final Field<Adhesive, SourcedRange> PRESSURE_SOFTWOOD =
      Field.figure("pressure-softwood", PRESSURE, a -> a.line().pressureSoftwood());
  private static final Field<Adhesive, SourcedRange> PRESSURE_MEDIUM =
      Field.figure("pressure-medium", PRESSURE, a -> a.line().pressureMedium());
  private static final Field<Adhesive, SourcedRange> PRESSURE_HARDWOOD =
      Field.figure("pressure-hardwood", PRESSURE, a -> a.line().pressureHardwood());
  private static final Field<Adhesive, SourcedRange> MAXIMUM_GAP =
      Field.figure("maximum-gap", new Limits(Unit.METRE, 0, 0.05), a -> a.line().maximumGap());
  private static final Field<Adhesive, Adhesive.OilyWoods> OILY_WOODS =
      Field.word("oily-woods", Adhesive.OilyWoods.values(), a -> a.bond().oilyWoods());
  private static final Field<Adhesive, Adhesive.WaterResistance> WATER_RESISTANCE =
      Field.word(
          "water-resistance", Adhesive.WaterResistance.values(), a -> a.bond().waterResistance());
  private static final Field<Adhesive, Boolean> CREEPS =
      Field.flag("creeps", a -> a.bond().creeps());
  private static final Field<Adhesive, Adhesive.Laid> LAID =
      Field.word("laid", Adhesive.Laid.values(), a -> a.spreading().laid());
  private static final Field<Adhesive, Adhesive.Faces> FACES =
      Field.word("faces", Adhesive.Faces.values(), a -> a.spreading().faces());
  private static final DirectionFields<Adhesive> HOW = DirectionFields.of(a -> a.spreading().how());

  static final FieldTable<Adhesive> TABLE =
      new FieldTable<>(
          List.of(
              FAMILY,
              SETTING,
              WATER_BASED,
              OPEN_TIME,
              CLOSED_TIME,
              CLAMP_TIME,
              HANDLE_AFTER,
              FULL_STRENGTH,
              MACHINE_AFTER,
              POT_LIFE,
              REFERENCE_TEMPERATURE,
              MINIMUM_TEMPERATURE,
              MAXIMUM_TEMPERATURE,
              RATE_Q10,
              RATE_ACTIVATION_ENERGY,
              RATE_DATUM,
              POT_RATE_Q10,
              LEAST_WOOD_MOISTURE,
              MOST_WOOD_MOISTURE,
              SPREAD,
              DENSITY,
              PRESSURE_SOFTWOOD,
              PRESSURE_MEDIUM,
              PRESSURE_HARDWOOD,
              MAXIMUM_GAP,
              OILY_WOODS,
              WATER_RESISTANCE,
              CREEPS,
              LAID,
              FACES,
              HOW.begin(),
              HOW.putOn(),
              HOW.sprayed(),
              HOW.afterwards(),
              HOW.lookFor()),
          AdhesiveFields::read);

  private AdhesiveFields() {}

  private static Adhesive read(FieldSource from) {
    return new Adhesive(
        FAMILY.read(from),
        SETTING.read(from),
        WATER_BASED.read(from),
        times(from),
        new Adhesive.Air(
            REFERENCE_TEMPERATURE.read(from),
            MINIMUM_TEMPERATURE.read(from),
            MAXIMUM_TEMPERATURE.read(from),
            new Adhesive.Speed(
                RATE_Q10.read(from),
                RATE_ACTIVATION_ENERGY.read(from),
                RATE_DATUM.read(from),
                POT_RATE_Q10.read(from)),
            new Adhesive.WoodMoisture(
                LEAST_WOOD_MOISTURE.read(from), MOST_WOOD_MOISTURE.read(from))),
        line(from),
        new Adhesive.Bond(OILY_WOODS.read(from), WATER_RESISTANCE.read(from), CREEPS.read(from)),
        new Adhesive.Spreading(LAID.read(from), FACES.read(from), HOW.read(from)));
  }

  private static Adhesive.Times times(FieldSource from) {
    return new Adhesive.Times(
        OPEN_TIME.read(from),
        CLOSED_TIME.read(from),
        CLAMP_TIME.read(from),
        HANDLE_AFTER.read(from),
        FULL_STRENGTH.read(from),
        MACHINE_AFTER.read(from),
        POT_LIFE.read(from));
  }

  private static Adhesive.Line line(FieldSource from) {
    return new Adhesive.Line(
        SPREAD.read(from),
        DENSITY.read(from),
        PRESSURE_SOFTWOOD.read(from),
        PRESSURE_MEDIUM.read(from),
        PRESSURE_HARDWOOD.read(from),
        MAXIMUM_GAP.read(from));
  }
}
