package benchlore.schedules.quantity;

import java.util.Objects;

/**
 * A finite number with its unit.
 *
 * @param value the number, in {@code unit}; never NaN or infinite
 * @param unit what the number counts
 */
public record Quantity(double value, Unit unit) {
  /** Refuses a number that is not finite: the engine answers a refusal before it gets here. */
  public Quantity {
    Objects.requireNonNull(unit, "unit");
    if (!Double.isFinite(value)) {
      throw new ComponentException("value", "must be finite: " + Numeric.text(value));
    }
  }

  /** Makes a quantity; {@code value} in {@code unit}. */
  public static Quantity of(double value, Unit unit) {
    return new Quantity(value, unit);
  }
}
