package benchlore.schedules.project;

import java.util.List;

/**
 * How long a part takes to be tried in its place and to be fitted for good, by how it is held and
 * how large it is: a door takes half an hour, a knob two minutes. All from memory of ordinary shop
 * pace.
 */
enum FitTime {
  /** Hinges let in and a latch set. */
  HINGED(1_200, 1_800),
  /** Guides or a groove eased. */
  SLIDING(900, 1_200),
  /** A knob, a slat, a leg: it goes where it belongs. */
  SMALL(60, 120),
  /** A shelf, a rail, a drawer front. */
  MIDDLING(300, 600),
  /** A top or side that two hands lift. */
  LARGE(600, 1_200);

  private static final double NARROW_METRE = 0.1;
  private static final double SMALL_SQUARE_METRE = 0.05;
  private static final double MIDDLING_SQUARE_METRE = 0.5;

  /** To look at the gap of one moving part again, seconds. */
  private static final double CHECK_SECOND = 180;

  private final double triedSecond;
  private final double fittedSecond;

  FitTime(double triedSecond, double fittedSecond) {
    this.triedSecond = triedSecond;
    this.fittedSecond = fittedSecond;
  }

  static FitTime of(Part part) {
    if (part.moves() == Moves.HINGED) {
      return HINGED;
    }
    if (part.moves() == Moves.SLIDING) {
      return SLIDING;
    }
    double face = part.lengthMetre() * part.widthMetre();
    if (part.widthMetre() <= NARROW_METRE || face <= SMALL_SQUARE_METRE) {
      return SMALL;
    }
    return face <= MIDDLING_SQUARE_METRE ? MIDDLING : LARGE;
  }

  /** To try all parts in their places, bare, seconds. */
  static double dryFitSecond(List<Part> parts) {
    double seconds = 0;
    for (Part part : parts) {
      seconds = of(part).triedSecond * part.count() + seconds;
    }
    return seconds;
  }

  /** To look at the gaps of all moving parts again, seconds; 0 if none moves. */
  static double checkSecond(List<Part> parts) {
    double seconds = 0;
    for (Part part : parts) {
      boolean moves = part.moves().hanging().isPresent();
      seconds = moves ? CHECK_SECOND * part.count() + seconds : seconds;
    }
    return seconds;
  }

  /** To fit all finished parts, seconds. */
  static double installSecond(List<Part> parts) {
    double seconds = 0;
    for (Part part : parts) {
      seconds = of(part).fittedSecond * part.count() + seconds;
    }
    return seconds;
  }
}
