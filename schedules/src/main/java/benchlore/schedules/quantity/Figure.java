package benchlore.schedules.quantity;

import java.util.Objects;

/**
 * A named number used in a line of working.
 *
 * @param name what it is, in the trade's words: "recoat opens", "room volume"
 * @param quantity the number and unit
 * @param from where it comes from
 */
public record Figure(String name, Quantity quantity, Provenance from) {
  /** Refuses nulls. */
  public Figure {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(quantity, "quantity");
    Objects.requireNonNull(from, "from");
  }

  /** A figure the person gave. */
  public static Figure input(String name, double value, Unit unit) {
    return new Figure(name, Quantity.of(value, unit), Provenance.input());
  }

  /** A figure worked out earlier in the same answer. */
  public static Figure computed(String name, double value, Unit unit) {
    return new Figure(name, Quantity.of(value, unit), Provenance.computed());
  }

  /** A figure from a table or record. */
  public static Figure of(String name, double value, Unit unit, Provenance from) {
    return new Figure(name, Quantity.of(value, unit), from);
  }
}
