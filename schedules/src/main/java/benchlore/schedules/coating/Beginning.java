package benchlore.schedules.coating;

import benchlore.schedules.time.Moment;
import java.util.Objects;

/**
 * When the first coat goes on, and what was won by not taking the first moment there is.
 *
 * @param start the moment
 * @param heldSeconds how much later that is than it could be, 0 or more
 * @param wonSeconds how much earlier the last coat is on for it, 0 or more
 */
public record Beginning(Moment start, double heldSeconds, double wonSeconds) {
  /** Refuses null. */
  public Beginning {
    Objects.requireNonNull(start, "start");
  }

  /** The first moment there is. */
  public static Beginning at(Moment start) {
    return new Beginning(start, 0, 0);
  }
}
