package benchlore.schedules.material;

import benchlore.schedules.material.Field.Limits;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;
import java.util.List;
import java.util.Optional;

/** Every field of a species: its key, what may stand there, where the record keeps it. */
final class SpeciesFields {
  private static final Limits SHRINKAGE = new Limits(Unit.PERCENT, 0.1, 20);
  private static final Limits MOVEMENT = new Limits(Unit.PER_PERCENT_MOISTURE, 0.0001, 0.01);

  static final Field<Species, Species.Group> GROUP =
      Field.word("group", Species.Group.values(), Species::group);
  static final Field<Species, SourcedRange> SPECIFIC_GRAVITY =
      Field.figure("specific-gravity", new Limits(Unit.RATIO, 0.05, 1.5), Species::specificGravity);
  static final Field<Species, Optional<SourcedRange>> HARDNESS =
      Field.optional("hardness", new Limits(Unit.NEWTON, 100, 30_000), Species::hardness);
  static final Field<Species, SourcedRange> RADIAL_SHRINKAGE =
      Field.figure("radial-shrinkage", SHRINKAGE, w -> w.movement().radialShrinkage());
  static final Field<Species, SourcedRange> TANGENTIAL_SHRINKAGE =
      Field.figure("tangential-shrinkage", SHRINKAGE, w -> w.movement().tangentialShrinkage());
  static final Field<Species, Optional<SourcedRange>> MOVEMENT_RADIAL =
      Field.optional("movement-radial", MOVEMENT, w -> w.movement().movementRadial());
  static final Field<Species, Optional<SourcedRange>> MOVEMENT_TANGENTIAL =
      Field.optional("movement-tangential", MOVEMENT, w -> w.movement().movementTangential());
  static final Field<Species, Pores> PORES =
      Field.word("pores", Pores.values(), w -> w.surface().pores());
  static final Field<Species, Boolean> OPEN_GRAINED =
      Field.flag("open-grained", w -> w.surface().openGrained());
  static final Field<Species, Boolean> OILY = Field.flag("oily", w -> w.surface().oily());
  static final Field<Species, Boolean> BLOTCH_PRONE =
      Field.flag("blotch-prone", w -> w.surface().blotchProne());
  static final Field<Species, Boolean> TANNIN_RICH =
      Field.flag("tannin-rich", w -> w.surface().tanninRich());
  static final Field<Species, Species.Resin> RESIN =
      Field.word("resin", Species.Resin.values(), w -> w.surface().resin());
  static final Field<Species, Species.UnderFilm> UNDER_FILM =
      Field.word("under-film", Species.UnderFilm.values(), w -> w.surface().underFilm());

  static final FieldTable<Species> TABLE =
      new FieldTable<>(
          List.of(
              GROUP,
              SPECIFIC_GRAVITY,
              HARDNESS,
              RADIAL_SHRINKAGE,
              TANGENTIAL_SHRINKAGE,
              MOVEMENT_RADIAL,
              MOVEMENT_TANGENTIAL,
              PORES,
              OPEN_GRAINED,
              OILY,
              BLOTCH_PRONE,
              TANNIN_RICH,
              RESIN,
              UNDER_FILM),
          SpeciesFields::read);

  private SpeciesFields() {}

  private static Species read(FieldSource from) {
    return new Species(
        GROUP.read(from),
        SPECIFIC_GRAVITY.read(from),
        HARDNESS.read(from),
        new Species.Movement(
            RADIAL_SHRINKAGE.read(from),
            TANGENTIAL_SHRINKAGE.read(from),
            MOVEMENT_RADIAL.read(from),
            MOVEMENT_TANGENTIAL.read(from)),
        new Species.Surface(
            PORES.read(from),
            OPEN_GRAINED.read(from),
            OILY.read(from),
            BLOTCH_PRONE.read(from),
            TANNIN_RICH.read(from),
            RESIN.read(from),
            UNDER_FILM.read(from)));
  }
}
