package benchlore.schedules.material;

import benchlore.schedules.quantity.SourcedRange;
import java.util.Objects;
import java.util.Optional;

/**
 * What the engine needs to know of one species. Ranges stay ranges. What may stand in each field is
 * said once, in {@link #table()}.
 *
 * @param group broadleaf tree or conifer
 * @param specificGravity oven-dry mass over volume at 12 % moisture content
 * @param hardness side hardness, N
 * @param movement how it shrinks and swells
 * @param surface what sanding, glue and finish meet
 */
public record Species(
    Group group,
    SourcedRange specificGravity,
    Optional<SourcedRange> hardness,
    Movement movement,
    Surface surface) {
  /** What kind of tree it comes from. */
  public enum Group {
    /** A broadleaf tree. */
    HARDWOOD,
    /** A conifer. */
    SOFTWOOD
  }

  /** Where resin sits in a wood. */
  public enum Resin {
    /** No resin to speak of. */
    NONE,
    /** In knots and pockets. */
    KNOTS,
    /** All through: sticky streaks as well. */
    PITCH
  }

  /** What a film finish wants under it on this wood. */
  public enum UnderFilm {
    /** Nothing but sanding. */
    BARE,
    /** A wipe with solvent just before. */
    WIPED,
    /** A thin coat of dewaxed shellac on the wiped wood: its oil or its colour comes up. */
    SEALED,
    /** No film lasts on it. */
    NONE
  }

  /**
   * How it shrinks and swells.
   *
   * @param radialShrinkage green to oven-dry, percent
   * @param tangentialShrinkage green to oven-dry, percent
   * @param movementRadial dimensional change coefficient, a fraction for one percentage point of
   *     moisture; absent: worked out from the shrinkage
   * @param movementTangential the same along the rings
   */
  public record Movement(
      SourcedRange radialShrinkage,
      SourcedRange tangentialShrinkage,
      Optional<SourcedRange> movementRadial,
      Optional<SourcedRange> movementTangential) {
    /** Refuses nulls and figures outside the limits of their fields. */
    public Movement {
      SpeciesFields.RADIAL_SHRINKAGE.require(radialShrinkage);
      SpeciesFields.TANGENTIAL_SHRINKAGE.require(tangentialShrinkage);
      SpeciesFields.MOVEMENT_RADIAL.require(movementRadial);
      SpeciesFields.MOVEMENT_TANGENTIAL.require(movementTangential);
    }
  }

  /**
   * What sanding, glue and finish meet.
   *
   * @param pores how the vessels lie
   * @param openGrained true if the pores show as pits through a film unless they are filled
   * @param oily true if the wood carries oil or wax that troubles glue and film
   * @param blotchProne true if figure tears out or stain goes on uneven
   * @param tanninRich true if the wood is rich in tannin: dark marks with iron and with water
   * @param resin where resin sits in it
   * @param underFilm what a film finish wants under it
   */
  public record Surface(
      Pores pores,
      boolean openGrained,
      boolean oily,
      boolean blotchProne,
      boolean tanninRich,
      Resin resin,
      UnderFilm underFilm) {
    /** Refuses nulls. */
    public Surface {
      Objects.requireNonNull(pores, "pores");
      Objects.requireNonNull(resin, "resin");
      Objects.requireNonNull(underFilm, "underFilm");
    }
  }

  /** Refuses nulls and figures outside the limits of their fields. */
  public Species {
    Objects.requireNonNull(group, "group");
    SpeciesFields.SPECIFIC_GRAVITY.require(specificGravity);
    SpeciesFields.HARDNESS.require(hardness);
    Objects.requireNonNull(movement, "movement");
    Objects.requireNonNull(surface, "surface");
  }

  /** Every field of a species. */
  public static FieldTable<Species> table() {
    return SpeciesFields.TABLE;
  }
}
