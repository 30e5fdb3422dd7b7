package benchlore.schedules.sanding;

import java.util.List;

/**
 * The answer to a sanding question.
 *
 * @param startDepthMicron depth of what must come off, micrometres
 * @param passes the face passes, coarse to fine; none if the surface already will do
 * @param extras end grain, grain raising, pore filling, between coats
 * @param totals sums
 */
public record SandingSchedule(
    double startDepthMicron, List<SandingPass> passes, SandingExtras extras, SandingTotals totals) {
  /** Copies the list. */
  public SandingSchedule {
    passes = List.copyOf(passes);
  }
}
