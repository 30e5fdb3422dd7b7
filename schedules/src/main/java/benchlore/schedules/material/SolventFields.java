package benchlore.schedules.material;

import benchlore.schedules.material.Field.Limits;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;
import java.util.List;
import java.util.Optional;

/** Every field of a solvent: its key, what may stand there, where the record keeps it. */
final class SolventFields {
  private static final Limits CELSIUS = new Limits(Unit.CELSIUS, -200, 600);
  private static final Limits SHARE = new Limits(Unit.PERCENT, 0.001, 100);
  private static final Limits VAPOUR = new Limits(Unit.PPM, 0.001, 1e6);

  static final Field<Solvent, String> ID = Field.text("id", Solvent::id);
  static final Field<Solvent, SourcedRange> MOLAR_MASS =
      Field.figure("molar-mass", new Limits(Unit.KILOGRAM_PER_MOLE, 0.001, 2), Solvent::molarMass);
  static final Field<Solvent, SourcedRange> DENSITY =
      Field.figure(
          "density", new Limits(Unit.KILOGRAM_PER_CUBIC_METRE, 100, 5000), Solvent::density);
  static final Field<Solvent, Optional<SourcedRange>> BOILING_POINT =
      Field.optional("boiling-point", CELSIUS, s -> s.volatility().boilingPoint());
  static final Field<Solvent, Optional<SourcedRange>> VAPOUR_PRESSURE =
      Field.optional(
          "vapour-pressure",
          new Limits(Unit.PASCAL, 0.001, 1e7),
          s -> s.volatility().vapourPressure());
  static final Field<Solvent, Optional<SourcedRange>> EVAPORATION_RATE =
      Field.optional(
          "evaporation-rate",
          new Limits(Unit.RATIO, 1e-4, 1000),
          s -> s.volatility().evaporationRate());
  static final Field<Solvent, Optional<SourcedRange>> FLASH_POINT =
      Field.optional("flash-point", CELSIUS, s -> s.fire().flashPoint());
  static final Field<Solvent, Optional<SourcedRange>> LOWER_EXPLOSIVE_LIMIT =
      Field.optional("lower-explosive-limit", SHARE, s -> s.fire().lowerExplosiveLimit());
  static final Field<Solvent, Optional<SourcedRange>> UPPER_EXPLOSIVE_LIMIT =
      Field.optional("upper-explosive-limit", SHARE, s -> s.fire().upperExplosiveLimit());
  static final Field<Solvent, Optional<SourcedRange>> OSHA_PEL =
      Field.optional("osha-pel", VAPOUR, s -> s.exposure().oshaPel());
  static final Field<Solvent, Optional<SourcedRange>> NIOSH_REL =
      Field.optional("niosh-rel", VAPOUR, s -> s.exposure().nioshRel());
  static final Field<Solvent, Optional<SourcedRange>> SHORT_TERM =
      Field.optional("short-term", VAPOUR, s -> s.exposure().shortTerm());
  static final Field<Solvent, Optional<SourcedRange>> CEILING =
      Field.optional("ceiling", VAPOUR, s -> s.exposure().ceiling());
  static final Field<Solvent, Optional<SourcedRange>> IDLH =
      Field.optional("idlh", VAPOUR, s -> s.exposure().idlh());
  static final Field<Solvent, Boolean> REFUSED_AT_HOME =
      Field.flag("refused-at-home", Solvent::refusedAtHome);

  static final FieldTable<Solvent> TABLE =
      new FieldTable<>(
          List.of(
              ID,
              MOLAR_MASS,
              DENSITY,
              BOILING_POINT,
              VAPOUR_PRESSURE,
              EVAPORATION_RATE,
              FLASH_POINT,
              LOWER_EXPLOSIVE_LIMIT,
              UPPER_EXPLOSIVE_LIMIT,
              OSHA_PEL,
              NIOSH_REL,
              SHORT_TERM,
              CEILING,
              IDLH,
              REFUSED_AT_HOME),
          SolventFields::read);

  private SolventFields() {}

  private static Solvent read(FieldSource from) {
    return new Solvent(
        ID.read(from),
        MOLAR_MASS.read(from),
        DENSITY.read(from),
        new Solvent.Volatility(
            BOILING_POINT.read(from), VAPOUR_PRESSURE.read(from), EVAPORATION_RATE.read(from)),
        new Solvent.Fire(
            FLASH_POINT.read(from),
            LOWER_EXPLOSIVE_LIMIT.read(from),
            UPPER_EXPLOSIVE_LIMIT.read(from)),
        new Solvent.Exposure(
            OSHA_PEL.read(from),
            NIOSH_REL.read(from),
            SHORT_TERM.read(from),
            CEILING.read(from),
            IDLH.read(from)),
        REFUSED_AT_HOME.read(from));
  }
}
