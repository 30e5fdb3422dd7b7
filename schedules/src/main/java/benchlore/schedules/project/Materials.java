package benchlore.schedules.project;

import benchlore.schedules.air.Release;
import benchlore.schedules.material.Adhesive;
import benchlore.schedules.material.Finish;
import benchlore.schedules.material.Species;
import benchlore.schedules.sanding.SandingWood;
import java.util.List;
import java.util.Objects;

/**
 * What the project is made of.
 *
 * @param wood the species
 * @param adhesive for the blanks
 * @param finish on every part
 * @param solvents the volatile part of the finish, shares by mass; empty if nothing but water
 *     evaporates
 */
public record Materials(
    Species wood, Adhesive adhesive, Finish finish, List<Release.Share> solvents) {
  /** Copies the list; refuses nulls. */
  public Materials {
    Objects.requireNonNull(wood, "wood");
    Objects.requireNonNull(adhesive, "adhesive");
    Objects.requireNonNull(finish, "finish");
    solvents = List.copyOf(solvents);
  }

  /**
   * A species as sanding sees it: the middle of its figures; where it states no side hardness, a
   * middling one. Figure is a board's, not a species', and a wood that takes stain unevenly is not
   * figured for that.
   */
  public static SandingWood sandingWood(Species wood) {
    return new SandingWood(
        wood.hardness().orElse(ProjectFigures.HARDNESS).mid(),
        wood.specificGravity().mid() * 1000,
        wood.surface().pores(),
        wood.surface().openGrained(),
        false,
        wood.surface().oily());
  }
}
