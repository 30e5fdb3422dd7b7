package benchlore.schedules.material;

import benchlore.schedules.quantity.ComponentException;
import benchlore.schedules.quantity.Numeric;
import java.util.Objects;

/**
 * One solvent of a finish.
 *
 * @param solvent the solvent record's id
 * @param massShare its share of the volatile part by mass, above 0, up to 1
 */
public record SolventShare(String solvent, double massShare) {
  /** Refuses an empty id or a share outside the range. */
  public SolventShare {
    Objects.requireNonNull(solvent, "solvent");
    if (solvent.isEmpty()) {
      throw new ComponentException("solvent", "must not be empty");
    }
    if (!(massShare > 0 && massShare <= 1)) {
      throw new ComponentException(
          "massShare", "must be above 0, up to 1: " + Numeric.text(massShare));
    }
  }
}
