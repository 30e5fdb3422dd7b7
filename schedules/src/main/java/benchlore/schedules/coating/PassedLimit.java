package benchlore.schedules.coating;

import benchlore.schedules.material.Finish;
import benchlore.schedules.time.Moment;
import java.util.List;
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
record PassedLimit(WetLimit limit, Moment first, double worst, double mildest, boolean throughout) {
  /**
   * Looks at the wet hours.
   *
   * @return the breach; empty if the limit is kept to
   */
  static Optional<PassedLimit> find(WetLimit limit, Finish finish, List<WetAir.Sample> wet) {
    double bound = limit.bound(finish);
    Moment first = null;
    double worst = bound;
    double mildest = Double.NaN;
    boolean throughout = true;
    for (WetAir.Sample air : wet) {
      double figure = limit.figure(air);
      double excess = limit.excess(figure, bound);
      if (limit.isPassed(figure, bound)) {
        first = first == null ? air.moment() : first;
        mildest = milder(limit, mildest, figure, bound);
        worst = excess > limit.excess(worst, bound) ? figure : worst;
      } else {
        throughout = false;
      }
    }
    return first == null
        ? Optional.empty()
        : Optional.of(new PassedLimit(limit, first, worst, mildest, throughout));
  }

  private static double milder(WetLimit limit, double soFar, double figure, double bound) {
    boolean keep = limit.excess(soFar, bound) <= limit.excess(figure, bound);
    return keep ? soFar : figure;
  }
}
