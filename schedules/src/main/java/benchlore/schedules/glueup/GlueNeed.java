package benchlore.schedules.glueup;

import benchlore.schedules.glueup.GlueUpRequest.Joint;
import benchlore.schedules.glueup.GlueUpSchedule.Glue;
import benchlore.schedules.material.Adhesive;
import java.util.List;

/**
 * Adhesive to have at hand.
 *
 * <pre>
 * kg = area x spread x squeeze-out x pot loss;  litres = kg / density
 * </pre>
 *
 * <p>Spread is stated for one glue line and covers both faces: spread both, half on each. The high
 * end of the range is used, so that it does not run out half way.
 */
final class GlueNeed {
  private GlueNeed() {}

  /** Kilograms for so much glue line. */
  static double massKilogram(double areaSquareMetre, Adhesive adhesive) {
    double lines = areaSquareMetre * adhesive.line().spread().high();
    return lines * GlueUpFigures.SQUEEZE_OUT.high() * GlueUpFigures.POT_LOSS.high();
  }

  /** Everything for these joints. */
  static Glue of(List<Joint> joints, Adhesive adhesive) {
    double area = 0;
    for (Joint joint : joints) {
      area = joint.areaSquareMetre() * joint.count() + area;
    }
    double mass = massKilogram(area, adhesive);
    return new Glue(
        area, mass, mass / adhesive.line().density().low(), 0.5 * adhesive.line().spread().high());
  }
}
