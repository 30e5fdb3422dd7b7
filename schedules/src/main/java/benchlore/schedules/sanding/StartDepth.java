package benchlore.schedules.sanding;

import benchlore.schedules.answer.WorkingLine;

/**
 * What must come off before the surface is sound.
 *
 * @param depthMicron depth to remove, film included, micrometres
 * @param filmMicron how much of it is old film
 * @param grainMicron grain that last sanded it; infinite if it was cut, not sanded
 * @param light true for a scuff that only dulls
 * @param line the working
 */
public record StartDepth(
    double depthMicron, double filmMicron, double grainMicron, boolean light, WorkingLine line) {

  /** A cut surface. */
  static StartDepth cut(double depthMicron, WorkingLine line) {
    return new StartDepth(depthMicron, 0, Double.POSITIVE_INFINITY, false, line);
  }

  /** Depth of sound wood that takes as long to sand. */
  double workMicron() {
    double extra = SandingFigures.FILM_AS_WOOD.low() - 1;
    return light ? depthMicron : filmMicron * extra + depthMicron;
  }
}
