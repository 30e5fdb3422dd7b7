package benchlore.schedules.material;

import benchlore.schedules.quantity.SourcedRange;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What turns a finish hard and how fast.
 *
 * @param mechanisms how it dries, at least one; the first governs drying, the last full cure
 * @param rateQ10 factor on the rate for 10 deg C; else the table of the mechanism
 * @param potLife seconds a mixed batch stays usable
 */
public record Curing(
    List<DryingMechanism> mechanisms,
    Optional<SourcedRange> rateQ10,
    Optional<SourcedRange> potLife) {
  /** Copies the list; refuses nulls and a finish that dries by nothing. */
  public Curing {
    mechanisms = List.copyOf(mechanisms);
    if (mechanisms.isEmpty()) {
      throw new IllegalArgumentException("mechanisms must not be empty");
    }
    Objects.requireNonNull(rateQ10, "rateQ10");
    Objects.requireNonNull(potLife, "potLife");
  }
}
