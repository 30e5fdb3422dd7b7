package benchlore.schedules.answer;

import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.quantity.Unit;
import java.util.ArrayList;
import java.util.List;

/**
 * Gathers refusals while a request is checked, so that all of them are told at once.
 *
 * <p>Not immutable and not for sharing: make one, use it in one method, take {@link #refusals()}.
 */
public final class Checks {
  private final List<Refusal> refusals = new ArrayList<>();

  /**
   * Checks that a number is finite and within a range.
   *
   * @param input the input's name in the request
   * @param value the number given
   * @param lowInclusive lowest value accepted
   * @param highInclusive highest value accepted
   * @param unit of all three
   * @return this
   */
  public Checks within(
      String input, double value, double lowInclusive, double highInclusive, Unit unit) {
    if (!(value >= lowInclusive && value <= highInclusive)) {
      refusals.add(
          new Refusal(
              input,
              Message.of(InputWords.heading(input) + " is not a figure this rule holds for."),
              Message.of(
                  "Give a figure from {0} to {1}.",
                  Quantity.of(lowInclusive, unit), Quantity.of(highInclusive, unit))));
    }
    return this;
  }

  /** Adds a refusal unless {@code fine}. */
  public Checks require(boolean fine, String input, String problem, String remedy) {
    if (!fine) {
      refusals.add(Refusal.of(input, problem, remedy));
    }
    return this;
  }

  /** Adds a refusal made elsewhere. */
  public Checks add(Refusal refusal) {
    refusals.add(refusal);
    return this;
  }

  /** True if nothing was wrong so far. */
  public boolean isValid() {
    return refusals.isEmpty();
  }

  /** Everything wrong so far, in the order found. */
  public List<Refusal> refusals() {
    return List.copyOf(refusals);
  }
}
