package benchlore.schedules.material;

import benchlore.schedules.quantity.SourcedRange;
import java.util.Objects;
import java.util.Optional;

/**
 * How a finish can hurt.
 *
 * @param flashPoint flash point, deg C
 * @param selfHeatingRags whether wet rags heat up by themselves and catch fire
 * @param isocyanate whether it holds isocyanate
 * @param formaldehyde whether it gives off formaldehyde as it cures
 */
public record Hazards(
    Optional<SourcedRange> flashPoint,
    boolean selfHeatingRags,
    boolean isocyanate,
    boolean formaldehyde) {
  /** Refuses a null. */
  public Hazards {
    Objects.requireNonNull(flashPoint, "flashPoint");
  }
}
