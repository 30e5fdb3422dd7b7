package benchlore.schedules.glueup;

import benchlore.schedules.glueup.GlueUpRequest.Clamps;
import benchlore.schedules.glueup.GlueUpRequest.Joint;
import benchlore.schedules.quantity.Numeric;
import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;

/**
 * How many clamps stand side by side along a joint, and the pressure they give at most: with high
 * pressures and long or wide joints no row of hand clamps gets there.
 *
 * <pre>
 * n = 2 floor(length / width of a clamp), one row over and one under the work, at least 1
 * p = n x force of a clamp / (length x width of the joint)
 * </pre>
 */
final class ClampRoom {
  /** What a bar clamp takes up along the joint, handle and all, where its jaw is not wider. */
  static final SourcedRange WIDTH =
      SourcedRange.of(
          0.05,
          Unit.METRE,
          Provenance.fromMemory("a bar clamp's head with room to turn the screw"));

  private ClampRoom() {}

  /** The most clamps that fit along a joint. */
  static int most(Joint joint, Clamps clamps) {
    double width = Math.max(WIDTH.low(), clamps.headMetre());
    return Math.max(1, 2 * whole(joint.lengthMetre() / width));
  }

  private static int whole(double share) {
    return Numeric.round(Math.floor(share + 1e-9));
  }

  /** The pressure they give, each as tight as it goes by hand, Pa. */
  static double mostPascal(Joint joint, Clamps clamps) {
    return most(joint, clamps) * clamps.forceNewton() / joint.areaSquareMetre();
  }
}
