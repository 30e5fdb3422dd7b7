package benchlore.schedules.material;

import benchlore.schedules.material.Field.Limits;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;
import java.util.List;
import java.util.Optional;

/** Every field of a finish: its key, what may stand there, where the record keeps it. */
final class FinishFields {
  private static final Limits TIME = new Limits(Unit.SECOND, 0, 400 * 86_400.0);
  private static final Limits GRADE = new Limits(Unit.COUNT, 12, 5000);

  private static final Field<Finish, FinishFamily> FAMILY =
      Field.word("family", FinishFamily.values(), Finish::family);
  private static final Field<Finish, FinishRole> ROLE =
      Field.word("role", FinishRole.values(), Finish::role);
  private static final Field<Finish, List<DryingMechanism>> MECHANISMS =
      Field.words("mechanisms", DryingMechanism.values(), f -> f.curing().mechanisms());
  private static final Field<Finish, Optional<SourcedRange>> RATE_Q10 =
      Field.optional("rate-q10", new Limits(Unit.RATIO, 1, 5), f -> f.curing().rateQ10());
  private static final Field<Finish, Optional<SourcedRange>> POT_LIFE =
      Field.optional("pot-life", TIME, f -> f.curing().potLife());
  private static final Field<Finish, Optional<SourcedRange>> TOUCH_DRY =
      Field.optional("touch-dry", TIME, f -> f.times().touchDry());
  private static final Field<Finish, Optional<SourcedRange>> RECOAT_OPENS =
      Field.optional("recoat-opens", TIME, f -> f.times().recoatOpens());
  private static final Field<Finish, Optional<SourcedRange>> SAND_AFTER =
      Field.optional("sand-after", TIME, f -> f.times().sandAfter());
  private static final Field<Finish, Optional<SourcedRange>> HANDLE_AFTER =
      Field.optional("handle-after", TIME, f -> f.times().handleAfter());
  private static final Field<Finish, Optional<SourcedRange>> LIGHT_USE =
      Field.optional("light-use", TIME, f -> f.times().lightUse());
  private static final Field<Finish, Optional<SourcedRange>> FULL_CURE =
      Field.optional("full-cure", TIME, f -> f.times().fullCure());
  private static final Field<Finish, Optional<SourcedRange>> RECOAT_CLOSES =
      Field.optional("recoat-closes", TIME, f -> f.times().recoatCloses());
  private static final Field<Finish, Optional<SourcedRange>> STACK_AFTER =
      Field.optional("stack-after", TIME, f -> f.times().stackAfter());
  private static final Field<Finish, SourcedRange> REFERENCE_TEMPERATURE =
      Field.figure(
          "reference-temperature",
          new Limits(Unit.CELSIUS, 0, 45),
          f -> f.air().referenceTemperature());
  private static final Field<Finish, SourcedRange> REFERENCE_HUMIDITY =
      Field.figure(
          "reference-humidity", new Limits(Unit.PERCENT, 5, 95), f -> f.air().referenceHumidity());
  private static final Field<Finish, SourcedRange> MINIMUM_TEMPERATURE =
      Field.figure(
          "minimum-temperature",
          new Limits(Unit.CELSIUS, -30, 45),
          f -> f.air().minimumTemperature());
  private static final Field<Finish, SourcedRange> MAXIMUM_TEMPERATURE =
      Field.figure(
          "maximum-temperature",
          new Limits(Unit.CELSIUS, 0, 60),
          f -> f.air().maximumTemperature());
  private static final Field<Finish, SourcedRange> MAXIMUM_HUMIDITY =
      Field.figure(
          "maximum-humidity", new Limits(Unit.PERCENT, 5, 100), f -> f.air().maximumHumidity());
  private static final Field<Finish, Optional<SourcedRange>> MINIMUM_HUMIDITY =
      Field.optional(
          "minimum-humidity", new Limits(Unit.PERCENT, 0, 95), f -> f.air().minimumHumidity());
  private static final Field<Finish, SourcedRange> SOLIDS_BY_VOLUME =
      Field.figure(
          "solids-by-volume", new Limits(Unit.PERCENT, 0.1, 100), f -> f.liquid().solidsByVolume());
  private static final Field<Finish, SourcedRange> DENSITY =
      Field.figure(
          "density",
          new Limits(Unit.KILOGRAM_PER_CUBIC_METRE, 500, 3000),
          f -> f.liquid().density());
  private static final Field<Finish, SourcedRange> VOC =
      Field.figure(
          "voc", new Limits(Unit.KILOGRAM_PER_CUBIC_METRE, 0, 1500), f -> f.liquid().voc());
  private static final Field<Finish, List<SolventShare>> SOLVENTS =
      Field.groups("solvents", SolventShare.TABLE, f -> f.liquid().solvents());
  private static final Field<Finish, Optional<SourcedRange>> FLASH_POINT =
      Field.optional(
          "flash-point",
          new Limits(Unit.CELSIUS, -60, 400),
          f -> f.liquid().hazards().flashPoint());
  private static final Field<Finish, Boolean> SELF_HEATING_RAGS =
      Field.flag("self-heating-rags", f -> f.liquid().hazards().selfHeatingRags());
  private static final Field<Finish, Boolean> ISOCYANATE =
      Field.flag("isocyanate", f -> f.liquid().hazards().isocyanate());
  private static final Field<Finish, Boolean> FORMALDEHYDE =
      Field.flag("formaldehyde", f -> f.liquid().hazards().formaldehyde());
  private static final Field<Finish, CoatBond> BOND =
      Field.word("bond", CoatBond.values(), f -> f.film().bond());
  private static final Field<Finish, SourcedRange> WET_FILM =
      Field.figure("wet-film", new Limits(Unit.MICRON, 1, 1000), f -> f.film().wetFilm());
  private static final Field<Finish, SourcedRange> COATS =
      Field.figure("coats", new Limits(Unit.COUNT, 1, 50), f -> f.film().coats());
  private static final Field<Finish, Optional<SourcedRange>> MAXIMUM_DRY_FILM =
      Field.optional(
          "maximum-dry-film", new Limits(Unit.MICRON, 1, 5000), f -> f.film().maximumDryFilm());
  private static final Field<Finish, List<Sheen>> SHEENS =
      Field.words("sheens", Sheen.values(), f -> f.film().sheens());
  private static final Field<Finish, List<ApplicationMethod>> METHODS =
      Field.words("methods", ApplicationMethod.values(), f -> f.use().methods());
  private static final Field<Finish, List<UsePlace>> PLACES =
      Field.words("places", UsePlace.values(), f -> f.use().places());
  private static final Field<Finish, SourcedRange> FINAL_GRADE =
      Field.figure("final-grade", GRADE, f -> f.use().finalGrade());
  private static final Field<Finish, SourcedRange> BETWEEN_COAT_GRADE =
      Field.figure("between-coat-grade", GRADE, f -> f.use().betweenCoatGrade());
  private static final Field<Finish, Boolean> RAISES_GRAIN =
      Field.flag("raises-grain", f -> f.use().raisesGrain());
  private static final DirectionFields<Finish> HOW = DirectionFields.of(f -> f.use().how());

  static final FieldTable<Finish> TABLE =
      new FieldTable<>(
          List.of(
              FAMILY,
              ROLE,
              MECHANISMS,
              RATE_Q10,
              POT_LIFE,
              TOUCH_DRY,
              RECOAT_OPENS,
              SAND_AFTER,
              HANDLE_AFTER,
              LIGHT_USE,
              FULL_CURE,
              RECOAT_CLOSES,
              STACK_AFTER,
              REFERENCE_TEMPERATURE,
              REFERENCE_HUMIDITY,
              MINIMUM_TEMPERATURE,
              MAXIMUM_TEMPERATURE,
              MAXIMUM_HUMIDITY,
              MINIMUM_HUMIDITY,
              SOLIDS_BY_VOLUME,
              DENSITY,
              VOC,
              SOLVENTS,
              FLASH_POINT,
              SELF_HEATING_RAGS,
              ISOCYANATE,
              FORMALDEHYDE,
              BOND,
              WET_FILM,
              COATS,
              MAXIMUM_DRY_FILM,
              SHEENS,
              METHODS,
              PLACES,
              FINAL_GRADE,
              BETWEEN_COAT_GRADE,
              RAISES_GRAIN,
              HOW.begin(),
              HOW.putOn(),
              HOW.sprayed(),
              HOW.afterwards(),
              HOW.lookFor()),
          FinishFields::read);

  private FinishFields() {}

  private static Finish read(FieldSource from) {
    return new Finish(
        FAMILY.read(from),
        ROLE.read(from),
        new Curing(MECHANISMS.read(from), RATE_Q10.read(from), POT_LIFE.read(from)),
        times(from),
        air(from),
        liquid(from),
        new FilmBuild(
            BOND.read(from),
            WET_FILM.read(from),
            COATS.read(from),
            MAXIMUM_DRY_FILM.read(from),
            SHEENS.read(from)),
        new FinishUse(
            METHODS.read(from),
            PLACES.read(from),
            FINAL_GRADE.read(from),
            BETWEEN_COAT_GRADE.read(from),
            RAISES_GRAIN.read(from),
            HOW.read(from)));
  }

  private static StatedTimes times(FieldSource from) {
    return new StatedTimes(
        TOUCH_DRY.read(from),
        RECOAT_OPENS.read(from),
        SAND_AFTER.read(from),
        HANDLE_AFTER.read(from),
        LIGHT_USE.read(from),
        FULL_CURE.read(from),
        RECOAT_CLOSES.read(from),
        STACK_AFTER.read(from));
  }

  private static AirLimits air(FieldSource from) {
    return new AirLimits(
        REFERENCE_TEMPERATURE.read(from),
        REFERENCE_HUMIDITY.read(from),
        MINIMUM_TEMPERATURE.read(from),
        MAXIMUM_TEMPERATURE.read(from),
        MAXIMUM_HUMIDITY.read(from),
        MINIMUM_HUMIDITY.read(from));
  }

  private static Liquid liquid(FieldSource from) {
    return new Liquid(
        SOLIDS_BY_VOLUME.read(from),
        DENSITY.read(from),
        VOC.read(from),
        SOLVENTS.read(from),
        new Hazards(
            FLASH_POINT.read(from),
            SELF_HEATING_RAGS.read(from),
            ISOCYANATE.read(from),
            FORMALDEHYDE.read(from)));
  }
}
