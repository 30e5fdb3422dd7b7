package benchlore.schedules.coating;

import benchlore.schedules.room.Climate;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.Optional;

/**
 * A limit of air not kept to while a film is wet.
 *
 * @param limit which
 * @param first when it is first passed
 * @param worst the figure farthest past the bound
 * @param mildest the figure least past it, among those past it
 * @param throughout whether no wet moment was sound
 */
record Breach(
    WetLimit limit, LocalDateTime first, double worst, double mildest, boolean throughout) {
  private static final int STEP_SECONDS = 600;
  private static final long DAY_SECONDS = 86_400;

  /**
   * Looks at every ten minutes of the wet hours, one day at most since every day is the same.
   *
   * @return the breach; empty if the limit is kept to
   */
  static Optional<Breach> find(WetLimit limit, DryingRequest request, Duration wet) {
    Climate climate = request.climate();
    double bound = limit.bound(request.finish());
    long span = Math.min(DAY_SECONDS, wet.toSeconds());
    LocalDateTime first = null;
    double worst = bound;
    double mildest = Double.NaN;
    boolean throughout = true;
    for (long second = 0; second <= span; second += STEP_SECONDS) {
      LocalDateTime moment = request.start().plusSeconds(second);
      double figure = limit.figure(climate, moment);
      double excess = limit.excess(figure, bound);
      // A rounding error is no breach.
      if (excess > 1e-6) {
        first = first == null ? moment : first;
        mildest = milder(limit, mildest, figure, bound);
        worst = excess > limit.excess(worst, bound) ? figure : worst;
      } else {
        throughout = false;
      }
    }
    return first == null
        ? Optional.empty()
        : Optional.of(new Breach(limit, first, worst, mildest, throughout));
  }

  private static double milder(WetLimit limit, double soFar, double figure, double bound) {
    boolean keep = limit.excess(soFar, bound) <= limit.excess(figure, bound);
    return keep ? soFar : figure;
  }
}
