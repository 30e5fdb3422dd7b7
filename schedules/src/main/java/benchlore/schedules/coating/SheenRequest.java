package benchlore.schedules.coating;

import benchlore.schedules.material.Sheen;
import benchlore.schedules.room.Climate;
import benchlore.schedules.time.Moment;
import java.util.Objects;
import java.util.Optional;

/**
 * The way to a sheen.
 *
 * @param job finish, area and method; its coats are those already on, which make the film that
 *     rubbing takes from
 * @param lastCoat when the last of those coats went on
 * @param today the first moment someone would work on it, not before {@code lastCoat}
 * @param climate the room's air over the day
 * @param existing the sheen it has now; empty for a film just built and not yet level
 * @param wanted the sheen wanted
 */
public record SheenRequest(
    QuantityRequest job,
    Moment lastCoat,
    Moment today,
    Climate climate,
    Optional<Sheen> existing,
    Sheen wanted) {
  /** Refuses nulls; figures are checked by {@link SheenRoute#plan}. */
  public SheenRequest {
    Objects.requireNonNull(job, "job");
    Objects.requireNonNull(lastCoat, "lastCoat");
    Objects.requireNonNull(today, "today");
    Objects.requireNonNull(climate, "climate");
    Objects.requireNonNull(existing, "existing");
    Objects.requireNonNull(wanted, "wanted");
  }

  /** The last coat as a drying request. */
  DryingRequest coat() {
    return new DryingRequest(job.finish(), job.wetFilmMicron(), climate, lastCoat);
  }
}
