package benchlore.schedules.coating;

import benchlore.schedules.material.ApplicationMethod;
import benchlore.schedules.material.Finish;
import benchlore.schedules.material.SprayGun;
import benchlore.schedules.material.Transfer;
import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * How much liquid to have ready.
 *
 * @param finish the finish
 * @param area what gets wet
 * @param coats how many coats, 1 to 50
 * @param wetFilmMicron wet film of each coat, micrometres, 1 to 1000
 * @param method how it goes on
 * @param gun the gun, looked at for spraying alone
 * @param transfer the reader's own share that lands on the work, 0.05 to 1; empty: by the table
 */
public record QuantityRequest(
    Finish finish,
    CoatedArea area,
    int coats,
    double wetFilmMicron,
    ApplicationMethod method,
    SprayGun gun,
    OptionalDouble transfer) {
  /** What lands is taken from the table. */
  public QuantityRequest(
      Finish finish,
      CoatedArea area,
      int coats,
      double wetFilmMicron,
      ApplicationMethod method,
      SprayGun gun) {
    this(finish, area, coats, wetFilmMicron, method, gun, OptionalDouble.empty());
  }

  /** The share that lands: the reader's own, else the table's. */
  SourcedRange landing() {
    return transfer.isPresent()
        ? SourcedRange.of(transfer.getAsDouble(), Unit.RATIO, Provenance.input())
        : Transfer.of(method, gun);
  }

  /** Refuses nulls; figures are checked by {@link Coating#quantity}. */
  public QuantityRequest {
    Objects.requireNonNull(finish, "finish");
    Objects.requireNonNull(area, "area");
    Objects.requireNonNull(method, "method");
    Objects.requireNonNull(gun, "gun");
    Objects.requireNonNull(transfer, "transfer");
  }
}
