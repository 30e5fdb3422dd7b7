package benchlore.schedules.coating;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.quantity.Quantity;
import java.util.Optional;

/**
 * The coating schedule.
 *
 * <p>Waits are the long end of what the finish states, corrected for the room's air hour by hour
 * and for the film's thickness; the label on the can always wins. Temperatures 0 to 45 deg C.
 */
public final class Coating {
  private Coating() {}

  /**
   * A whole sequence of coats from a start on: when each goes on, whether the one under it is
   * sanded first, how it dries, what it takes.
   *
   * @param request the job
   * @return the schedule; refused for figures outside their ranges, for a sheen or method the
   *     finish does not allow, for a film too thick, for spraying isocyanate, and where a coat
   *     can't dry
   */
  public static Answer<CoatingSchedule> plan(CoatingRequest request) {
    return Sequence.plan(request);
  }

  /**
   * Where to begin: the first moment from the request's start on at which the first coat can go on,
   * in shop hours and rather in air that breaks no limit while the film is wet; later, if all coats
   * then keep their windows and the last is on no later for it.
   *
   * @param request the job
   * @return empty if there is none within 14 days; for a request that {@link #plan} refuses for its
   *     figures, its start
   */
  public static Optional<Beginning> begin(CoatingRequest request) {
    return Sequence.begin(request);
  }

  /**
   * How one coat put on at a given moment dries, with the cautions of its wet hours.
   *
   * @param request the coat
   * @return the stages; refused for figures outside their ranges, for air past what the finish
   *     stands before it is touch dry, and where a stage is not reached in 400 days
   */
  public static Answer<DryingTimes> drying(DryingRequest request) {
    return Drying.plan(request);
  }

  /**
   * How a coat that is on already dries: what its air does to it is a caution, not a refusal.
   *
   * @param request the coat
   * @return the stages; refused for figures outside their ranges and where a stage is not reached
   */
  public static Answer<DryingTimes> laid(DryingRequest request) {
    return Drying.laid(request);
  }

  /**
   * How many coats build a dry film.
   *
   * @param request the film wanted
   * @return a whole number of coats; refused for finishes that build none, and above the thickest
   *     film the finish stands
   */
  public static Answer<Quantity> coats(CoatsRequest request) {
    return CoatCount.plan(request);
  }

  /**
   * Whether a measured surface is far enough above the dew point to coat now.
   *
   * @param request air and surface
   * @return the margin, with a caution where it is under 3 deg C; refused outside the ranges
   */
  public static Answer<DewMargin> dew(DewRequest request) {
    return DewCheck.plan(request);
  }
}
