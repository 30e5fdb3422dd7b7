package benchlore.schedules.quantity;

import java.util.Objects;

/**
 * A published or traded figure: a range (a single value has equal ends), its unit and where it
 * comes from. Ranges stay ranges; the rule that uses one says which end it takes and why.
 *
 * @param low lower end, inclusive
 * @param high upper end, inclusive, not below {@code low}
 * @param unit of both ends
 * @param from where the figure comes from
 */
public record SourcedRange(double low, double high, Unit unit, Provenance from) {
  /** Refuses ends that are not finite or are the wrong way round. */
  public SourcedRange {
    Objects.requireNonNull(unit, "unit");
    Objects.requireNonNull(from, "from");
    if (!Double.isFinite(low) || !Double.isFinite(high) || low > high) {
      throw new ComponentException(
          "low",
          "must be finite and not above high: " + Numeric.text(low) + ", " + Numeric.text(high));
    }
  }

  /** A single value. */
  public static SourcedRange of(double value, Unit unit, Provenance from) {
    return new SourcedRange(value, value, unit, from);
  }

  /** A range, both ends inclusive. */
  public static SourcedRange range(
      double lowInclusive, double highInclusive, Unit unit, Provenance from) {
    return new SourcedRange(lowInclusive, highInclusive, unit, from);
  }

  /** The middle of the range. */
  public double mid() {
    return 0.5 * (low + high);
  }
}
