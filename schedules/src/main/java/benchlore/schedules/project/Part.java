package benchlore.schedules.project;

import benchlore.schedules.movement.RingAngle;
import benchlore.schedules.sanding.StartSurface;
import java.util.Objects;

/**
 * A group of like solid-wood parts.
 *
 * @param name what it is called, without braces
 * @param count how many, 1 to 100
 * @param lengthMetre along the grain, finished size
 * @param widthMetre across the grain, finished size
 * @param thicknessMetre finished size
 * @param rings how the growth rings of its boards stand to the wide face
 * @param boards boards glued edge to edge into one blank, 1 to 20; 1 needs no glue
 * @param surface the surface after machining, before sanding
 * @param machiningSecond hands-on time to machine one part, as the maker expects it, 0 to a week
 * @param moves how it moves in an opening, if it does
 */
public record Part(
    String name,
    int count,
    double lengthMetre,
    double widthMetre,
    double thicknessMetre,
    RingAngle rings,
    int boards,
    StartSurface surface,
    double machiningSecond,
    Moves moves) {
  /** Refuses nulls; figures are checked by the plan. */
  public Part {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(rings, "rings");
    Objects.requireNonNull(surface, "surface");
    Objects.requireNonNull(moves, "moves");
  }

  /** Both faces and all edges of all of them, square metres. */
  public double coatedSquareMetre() {
    double around = 2 * lengthMetre + 2 * widthMetre;
    return 2 * lengthMetre * widthMetre * count + around * thicknessMetre * count;
  }

  /** The two end-grain edges of all of them, square metres. */
  public double endGrainSquareMetre() {
    return 2 * widthMetre * thicknessMetre * count;
  }
}
