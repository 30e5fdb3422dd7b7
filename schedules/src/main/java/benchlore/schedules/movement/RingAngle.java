package benchlore.schedules.movement;

import benchlore.schedules.answer.Checks;
import benchlore.schedules.quantity.Unit;

/**
 * How the growth rings stand to the wide face, seen on the end of the board: 0 degrees lie flat in
 * the face, 90 degrees stand square to it. A range, since a board is rarely one angle throughout.
 *
 * <p>The trade's classes by {@link #FLAT}, {@link #RIFT} and {@link #QUARTERED} (common practice;
 * their edges differ by a few degrees between graders). Any number may be given; a plan refuses an
 * angle outside 0 to 90.
 *
 * @param lowDegrees smallest angle in the board
 * @param highDegrees largest angle in the board
 */
public record RingAngle(double lowDegrees, double highDegrees) {
  /** Flat sawn, plain sawn: rings 0 to 30 degrees to the face. Moves most in width. */
  public static final RingAngle FLAT = new RingAngle(0, 30);

  /** Rift sawn: 30 to 60 degrees. */
  public static final RingAngle RIFT = new RingAngle(30, 60);

  /** Quarter sawn: 60 to 90 degrees. Moves least in width. */
  public static final RingAngle QUARTERED = new RingAngle(60, 90);

  /** One measured angle. */
  public static RingAngle of(double degrees) {
    return new RingAngle(degrees, degrees);
  }

  /** The same rings as they stand to the edge: what the thickness sees. */
  public RingAngle throughThickness() {
    return new RingAngle(90 - highDegrees, 90 - lowDegrees);
  }

  void check(Checks checks, String input) {
    checks
        .within(input + ".lowDegrees", lowDegrees, 0, 90, Unit.DEGREE)
        .within(input + ".highDegrees", highDegrees, 0, 90, Unit.DEGREE)
        .require(
            !(lowDegrees > highDegrees),
            input,
            "The smaller ring angle is above the larger one.",
            "Give the smaller angle first.");
  }
}
