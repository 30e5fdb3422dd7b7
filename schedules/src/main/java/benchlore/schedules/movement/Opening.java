package benchlore.schedules.movement;

import benchlore.schedules.answer.Checks;
import benchlore.schedules.quantity.Unit;
import java.util.List;
import java.util.Objects;

/**
 * The opening a moving part works in: a drawer, an inset door, a hatch. The opening itself is taken
 * not to move (its width set by long grain, metal or sheet), which is the safe side.
 *
 * @param partFilm finish to come on each edge of the part
 * @param openingFilm finish to come on each face of the opening
 * @param slipMetre room to slide left on each side in the dampest season, 0.0001 to 0.01
 * @param hanging where the part is held, and so which side takes the swelling
 * @param tapes what may be stuck on at the test-fit; not empty
 */
public record Opening(
    Film partFilm, Film openingFilm, double slipMetre, Hanging hanging, List<Tape> tapes) {
  /** Where a moving part is held across its grain. */
  public enum Hanging {
    /** Runs between two guides or hangs on its middle: each side takes half. */
    CENTRED(0.5),
    /** Held at one edge, such as hinges: the free side takes all of it. */
    ONE_EDGE(1);

    private final double share;

    Hanging(double share) {
      this.share = share;
    }

    /** Part of the whole movement that shows at the free side, 0.5 or 1. */
    public double share() {
      return share;
    }
  }

  /** Copies the list; refuses nulls. */
  public Opening {
    Objects.requireNonNull(partFilm, "partFilm");
    Objects.requireNonNull(openingFilm, "openingFilm");
    Objects.requireNonNull(hanging, "hanging");
    tapes = List.copyOf(tapes);
  }

  void check(Checks checks) {
    partFilm.check(checks, "opening.partFilm");
    openingFilm.check(checks, "opening.openingFilm");
    checks
        .within("opening.slipMetre", slipMetre, 0.0001, 0.01, Unit.METRE)
        .require(
            !tapes.isEmpty(),
            "opening.tapes",
            "No tape was given to set the gap with.",
            "Give at least one tape with its thickness, or take the common ones.");
    for (Tape tape : tapes) {
      tape.check(checks, "opening.tapes");
    }
  }
}
