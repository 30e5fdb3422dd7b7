package benchlore.schedules.material;

import benchlore.schedules.quantity.SourcedRange;
import java.util.List;
import java.util.Objects;

/**
 * A finish as it stands in the tin.
 *
 * @param solidsByVolume what stays behind, percent of the volume
 * @param density of the liquid, kg/m3
 * @param voc mass of solvent in the liquid, kg a cubic metre (grams a litre)
 * @param solvents what evaporates, with shares by mass; may be empty
 * @param hazards how it can hurt
 */
public record Liquid(
    SourcedRange solidsByVolume,
    SourcedRange density,
    SourcedRange voc,
    List<SolventShare> solvents,
    Hazards hazards) {
  /** Copies the list; refuses nulls. */
  public Liquid {
    Objects.requireNonNull(solidsByVolume, "solidsByVolume");
    Objects.requireNonNull(density, "density");
    Objects.requireNonNull(voc, "voc");
    solvents = List.copyOf(solvents);
    Objects.requireNonNull(hazards, "hazards");
  }
}
