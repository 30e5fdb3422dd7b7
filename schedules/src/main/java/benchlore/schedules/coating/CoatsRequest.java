package benchlore.schedules.coating;

import benchlore.schedules.material.Finish;
import java.util.Objects;

/**
 * How many coats make a film.
 *
 * @param finish the finish
 * @param wetFilmMicron wet film of each coat, micrometres, 1 to 1000
 * @param targetDryFilmMicron dry film wanted, micrometres, above 0, up to 2000
 */
public record CoatsRequest(Finish finish, double wetFilmMicron, double targetDryFilmMicron) {
  /** Refuses nulls; figures are checked by {@link Coating#coats}. */
  public CoatsRequest {
    Objects.requireNonNull(finish, "finish");
  }
}
