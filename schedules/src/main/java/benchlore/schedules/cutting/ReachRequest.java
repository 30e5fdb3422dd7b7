package benchlore.schedules.cutting;

import java.util.Objects;
import java.util.OptionalDouble;

/**
 * Can this bit make that cut? Any number may be given; {@link Cutting#plan(ReachRequest)} refuses
 * figures out of range.
 *
 * @param bit the bit
 * @param depthMetre whole depth below the work's surface, 0.0001 to 0.15
 * @param colletMetre length of the collet's bore, 0.005 to 0.06
 * @param noseToWorkMetre nearest the collet's nose comes to the surface the depth is measured from,
 *     template included, 0 to 0.1; for a hand router, how far the nose stays above the base at full
 *     plunge, and the template's thickness
 * @param templateMetre thickness of the template the bearing runs on, 0.002 to 0.05; needed for a
 *     bit with a bearing
 * @param firstPassMetre depth of the first pass, 0.0001 to 0.15
 */
public record ReachRequest(
    Bit bit,
    double depthMetre,
    double colletMetre,
    double noseToWorkMetre,
    OptionalDouble templateMetre,
    double firstPassMetre) {
  /** Refuses nulls. */
  public ReachRequest {
    Objects.requireNonNull(bit, "bit");
    Objects.requireNonNull(templateMetre, "templateMetre");
  }
}
