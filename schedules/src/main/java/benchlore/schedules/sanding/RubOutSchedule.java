package benchlore.schedules.sanding;

import java.util.List;

/**
 * How to rub out a film.
 *
 * @param papers the paper passes, coarse to fine
 * @param rubbing what follows the last paper, in order
 * @param seconds hands-on time of all
 * @param removedMicron film taken off
 * @param leftMicron film that stays
 */
public record RubOutSchedule(
    List<SandingPass> papers,
    List<RubKind> rubbing,
    double seconds,
    double removedMicron,
    double leftMicron) {
  /** Copies the lists. */
  public RubOutSchedule {
    papers = List.copyOf(papers);
    rubbing = List.copyOf(rubbing);
  }
}
