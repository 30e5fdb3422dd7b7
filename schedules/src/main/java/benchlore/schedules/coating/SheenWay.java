package benchlore.schedules.coating;

import benchlore.schedules.time.Moment;
import java.util.List;
import java.util.Objects;

/**
 * One way to the sheen wanted.
 *
 * @param kind which way
 * @param from when it can begin
 * @param steps the work in order; empty if there is nothing to do
 */
public record SheenWay(Kind kind, Moment from, List<SheenStep> steps) {
  /** Kinds of ways. */
  public enum Kind {
    /** It has that sheen already. */
    LEAVE,
    /** One more coat of the sheen wanted over the gloss build. */
    LAST_COAT,
    /** Rub the cured film. */
    RUB_OUT
  }

  /** Copies the list; refuses nulls. */
  public SheenWay {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(from, "from");
    steps = List.copyOf(steps);
  }

  /** The work's time, seconds. */
  public double seconds() {
    double sum = 0;
    for (SheenStep step : steps) {
      sum = sum + step.seconds();
    }
    return sum;
  }

  /** Everything it uses up. */
  public Supplies supplies() {
    Supplies sum = Supplies.NONE;
    for (SheenStep step : steps) {
      sum = sum.with(step.supplies());
    }
    return sum;
  }
}
