package benchlore.schedules.project;

import java.util.Objects;
import java.util.OptionalDouble;

/**
 * What a shop knows of its own way of working, where the rules would take the usual figure.
 *
 * @param transfer share of a sprayed finish that lands on the work, by the shop's own measuring,
 *     0.05 to 1; empty: the usual one
 * @param glueSettlesSecond how long glued joints settle here before they are planed; empty where
 *     that follows from the sheen
 */
public record Habits(OptionalDouble transfer, OptionalDouble glueSettlesSecond) {
  /** A shop that goes by the rules. */
  public static final Habits USUAL = new Habits(OptionalDouble.empty(), OptionalDouble.empty());

  /** Refuses nulls. */
  public Habits {
    Objects.requireNonNull(transfer, "transfer");
    Objects.requireNonNull(glueSettlesSecond, "glueSettlesSecond");
  }
}
