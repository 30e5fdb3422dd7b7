package benchlore.schedules.movement;

import java.util.List;
import java.util.Optional;

/**
 * How one part will move and what room to give it.
 *
 * @param moisture moisture through the year
 * @param movement how far its width moves
 * @param settling how long to let it lie before cutting to size
 * @param clearance the gap, if it moves in an opening
 * @param fixing how to screw it down, if asked
 */
public record FitSchedule(
    Moistures moisture,
    Travel movement,
    Settling settling,
    Optional<Clearance> clearance,
    Optional<Fixing> fixing) {
  /**
   * Moisture contents, percent.
   *
   * @param shopPercent where the wood settles in the shop
   * @param dryPercent in the driest season
   * @param dampPercent in the dampest season
   */
  public record Moistures(double shopPercent, double dryPercent, double dampPercent) {
    /** The middle of the year: the moisture to fit at. */
    public double middlePercent() {
      return 0.5 * (dryPercent + dampPercent);
    }
  }

  /**
   * Movement of the whole width, by the larger coefficient of the board's range.
   *
   * @param lowCoefficient least fraction for one point
   * @param highCoefficient most fraction for one point; used for every figure below
   * @param swellMetre growth from the size as fitted to the dampest season, 0 or more
   * @param shrinkMetre loss from the size as fitted to the driest season, 0 or more
   * @param yearMetre from driest to dampest
   * @param thicknessYearMetre growth of the thickness from driest to dampest: room to leave in a
   *     groove
   */
  public record Travel(
      double lowCoefficient,
      double highCoefficient,
      double swellMetre,
      double shrinkMetre,
      double yearMetre,
      double thicknessYearMetre) {}

  /**
   * Time to lie stickered in the shop's air before cutting to size. From memory, a range, and only
   * a stand-in for a moisture meter: settled is when two readings a week apart agree.
   *
   * @param lowSecond quickest
   * @param highSecond slowest
   */
  public record Settling(double lowSecond, double highSecond) {}

  /**
   * The gap between part and opening.
   *
   * @param filmMicron finish to come on the two facing faces together
   * @param growthMetre swelling that shows at this side
   * @param gapMetre to leave on each moving side at the test-fit, on bare wood
   * @param openingMinusPartMetre what the bare opening must exceed the bare part by, whole width
   * @param drySeasonGapMetre widest finished gap of the year at this side
   * @param stacks tape that gives at least the gap, closest first; empty if every tape takes too
   *     many layers
   */
  public record Clearance(
      double filmMicron,
      double growthMetre,
      double gapMetre,
      double openingMinusPartMetre,
      double drySeasonGapMetre,
      List<TapeStack> stacks) {
    /** Copies the list. */
    public Clearance {
      stacks = List.copyOf(stacks);
    }
  }

  /**
   * Layers of one tape.
   *
   * @param tape which
   * @param layers how many on each moving side, 1 or more
   * @param gapMicron what they stand for, never below the gap needed
   */
  public record TapeStack(Tape tape, int layers, double gapMicron) {}

  /**
   * How to screw the panel down.
   *
   * @param rigidAllowed true if plain tight holes will do
   * @param slots one for each screw asked about, in the order given
   */
  public record Fixing(boolean rigidAllowed, List<Slot> slots) {
    /** Copies the list. */
    public Fixing {
      slots = List.copyOf(slots);
    }
  }

  /**
   * A slot across the grain.
   *
   * @param distanceMetre from the place fixed tight
   * @param lengthMetre end to end
   * @param outwardMetre the screw's free travel, once set, as the panel shrinks towards the fixed
   *     place: from the screw's far side to the slot's far end
   * @param inwardMetre the same as the panel swells away: from its near side to the near end
   */
  public record Slot(
      double distanceMetre, double lengthMetre, double outwardMetre, double inwardMetre) {}
}
