package benchlore.schedules.coating;

import benchlore.schedules.material.ApplicationMethod;
import benchlore.schedules.material.Finish;
import benchlore.schedules.material.SprayGun;
import java.util.Objects;

/**
 * How much liquid to have ready.
 *
 * @param finish the finish
 * @param area what gets wet
 * @param coats how many coats, 1 to 50
 * @param wetFilmMicron wet film of each coat, micrometres, 1 to 1000
 * @param method how it goes on
 * @param gun the gun, looked at for spraying alone
 */
public record QuantityRequest(
    Finish finish,
    CoatedArea area,
    int coats,
    double wetFilmMicron,
    ApplicationMethod method,
    SprayGun gun) {
  /** Refuses nulls; figures are checked by {@link Coating#quantity}. */
  public QuantityRequest {
    Objects.requireNonNull(finish, "finish");
    Objects.requireNonNull(area, "area");
    Objects.requireNonNull(method, "method");
    Objects.requireNonNull(gun, "gun");
  }
}
