package benchlore.schedules.sanding;

import benchlore.schedules.quantity.ComponentException;
import benchlore.schedules.quantity.Numeric;
import benchlore.schedules.quantity.Provenance;
import java.util.Objects;

/**
 * One grade of coated abrasive.
 *
 * <p>Made by {@link Grits}; the table there holds every grade this package knows.
 *
 * @param system the scale the number belongs to
 * @param number the grade as printed on the back of the paper, 12 to 2500
 * @param micron average grain size, micrometres
 * @param from where the grain size comes from
 */
public record Grit(GritSystem system, int number, double micron, Provenance from) {
  /** Refuses a grain size that is not a positive finite number. */
  public Grit {
    Objects.requireNonNull(system, "system");
    Objects.requireNonNull(from, "from");
    if (!(micron > 0) || !Double.isFinite(micron)) {
      throw new ComponentException(
          "micron", "must be positive and finite: " + Numeric.text(micron));
    }
  }

  /** The grade as the trade writes it, the scale always shown: "P180", "CAMI 180". */
  public String label() {
    return system.prefix() + number;
  }
}
