package benchlore.schedules.coating;

import benchlore.schedules.room.Climate;
import java.time.LocalDateTime;

/**
 * A whole sequence of coats.
 *
 * @param quantity finish, area, coats, wet film and method
 * @param climate the room's air over the day
 * @param start when the first coat goes on, local wall-clock time
 * @param sessions when the later coats may go on
 * @param sheen the sheen wanted in the end
 */
public record CoatingRequest(
    QuantityRequest quantity,
    Climate climate,
    LocalDateTime start,
    CoatSessions sessions,
    Sheen sheen) {
  /** Refuses nulls; figures are checked by {@link Coating#plan}. */
  public CoatingRequest {
    if (quantity == null || climate == null || start == null || sessions == null || sheen == null) {
      throw new NullPointerException("quantity, climate, start, sessions and sheen");
    }
  }
}
