package benchlore.schedules.sanding;

import benchlore.schedules.answer.WorkingLine;

/**
 * What must come off before the surface is sound.
 *
 * @param depthMicron depth to remove, film included, micrometres
 * @param filmMicron how much of it is old film
 * @param grainMicron grain that last sanded it; infinite if it was cut, not sanded
 * @param light true for a scuff that only dulls
 * @param opening which grades open it
 * @param line the working
 */
public record StartDepth(
    double depthMicron,
    double filmMicron,
    double grainMicron,
    boolean light,
    Opening opening,
    WorkingLine line) {

  /** A cut surface. */
  static StartDepth cut(double depthMicron, Opening opening, WorkingLine line) {
    return new StartDepth(depthMicron, 0, Double.POSITIVE_INFINITY, false, opening, line);
  }

  /** Whether a grade may come first on this surface. */
  boolean opens(Grit grit) {
    return opening.takes(grit.micron());
  }

  /** Whether this surface opens with a coarser grade, or as coarse and has deeper marks. */
  public boolean isRougherThan(StartDepth other) {
    double mine = opening.finestMicron();
    double others = other.opening.finestMicron();
    return mine > others || (mine == others && depthMicron > other.depthMicron);
  }

  /** A cut surface whose depth the line works out. */
  static StartDepth cut(WorkingLine line, Opening opening) {
    return cut(line.result().quantity().value(), opening, line);
  }

  /** Depth of sound wood that takes as long to sand. */
  double workMicron() {
    double extra = SandingFigures.FILM_AS_WOOD.low() - 1;
    return light ? depthMicron : filmMicron * extra + depthMicron;
  }
}
