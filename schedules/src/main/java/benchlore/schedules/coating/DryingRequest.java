package benchlore.schedules.coating;

import benchlore.schedules.material.Finish;
import benchlore.schedules.room.Climate;
import benchlore.schedules.time.Moment;
import java.util.Objects;

/**
 * One coat put on at one moment.
 *
 * @param finish the finish
 * @param wetFilmMicron wet film, micrometres, 1 to 1000
 * @param climate the room's air over the day
 * @param start when the coat goes on, local wall-clock time
 */
public record DryingRequest(Finish finish, double wetFilmMicron, Climate climate, Moment start) {
  /** Refuses nulls; figures are checked by {@link Coating#drying}. */
  public DryingRequest {
    Objects.requireNonNull(finish, "finish");
    Objects.requireNonNull(climate, "climate");
    Objects.requireNonNull(start, "start");
  }

  /** The same coat at another moment. */
  DryingRequest withStart(Moment other) {
    return new DryingRequest(finish, wetFilmMicron, climate, other);
  }
}
