package benchlore.schedules.glueup;

import benchlore.schedules.glueup.GlueUpRequest.Clamps;
import benchlore.schedules.glueup.GlueUpRequest.Joint;
import benchlore.schedules.glueup.GlueUpSchedule.Governs;
import benchlore.schedules.glueup.GlueUpSchedule.Position;
import benchlore.schedules.glueup.GlueUpSchedule.Pressure;
import benchlore.schedules.glueup.GlueUpSchedule.Row;
import benchlore.schedules.material.Adhesive;
import benchlore.schedules.quantity.Numeric;
import java.util.ArrayList;
import java.util.List;

/**
 * How many clamps a joint takes and where they stand.
 *
 * <pre>
 * by force:   n = ceil(length x width x pressure / force of a clamp)
 * by spacing: s = min(2 (wood + caul) + jaw, 12 in);  e = min(1.5 in, s / 2)
 *             n = 1 + ceil((length - 2 e) / s);  1 if length is not above s nor 0.15 m
 * clamps = the larger, as far as the shelf goes and as they fit side by side
 * </pre>
 *
 * <p>A clamp presses a fan that widens at 45 degrees on either side, so the fans meet on the glue
 * line when clamps stand twice the wood and caul apart. Joints in line (a panel) pass one force
 * through all of them, so they count once. Sources: woodworking magazine editors' page, 2010 (45
 * degrees); glue-maker guide (ends and 8-12 in); woodworking magazine, September 2021 (force). The
 * fan is a picture, not mechanics: a stiff caul reaches farther.
 */
final class ClampRows {

  private ClampRows() {}

  /** Farthest apart clamps may stand, m. */
  static double spacingLimitMetre(double backingMetre, Clamps clamps) {
    double reach = backingMetre + clamps.caulDepthMetre();
    double fan = 2 * reach + clamps.headMetre();
    return Math.min(fan, GlueUpFigures.SPACING.high());
  }

  /** Clamps for even pressure along a joint, by the usual end distance. */
  static int bySpacing(double lengthMetre, double spacingMetre) {
    if (lengthMetre <= Math.min(spacingMetre, GlueUpFigures.ONE_CLAMP.low())) {
      return 1;
    }
    return bySpacing(lengthMetre, endMetre(spacingMetre), spacingMetre);
  }

  /** Clamps from one end distance to the other. */
  static int bySpacing(double lengthMetre, double endMetre, double spacingMetre) {
    return 1 + Numeric.ceil(Math.max(0, lengthMetre - 2 * endMetre) / spacingMetre);
  }

  /** Clamps for the pressure. */
  static int byForce(double areaSquareMetre, double pressurePascal, double forceNewton) {
    return Numeric.ceil(areaSquareMetre * pressurePascal / forceNewton);
  }

  /** True if the adhesive is held in clamps at all; a contact adhesive is only pressed. */
  static boolean needed(Adhesive adhesive) {
    double most =
        Math.max(
            Math.max(
                adhesive.line().pressureSoftwood().high(), adhesive.line().pressureMedium().high()),
            adhesive.line().pressureHardwood().high());
    return adhesive.times().clampTime().high() > 0 && most > 0;
  }

  /**
   * True if a joint is held in clamps: not a short edge joint with hot hide glue, which is rubbed
   * together until it grabs and left alone.
   */
  static boolean needed(Adhesive adhesive, Joint joint) {
    return needed(adhesive) && !rubbed(adhesive, joint);
  }

  private static boolean rubbed(Adhesive adhesive, Joint joint) {
    return adhesive.family() == Adhesive.Family.HOT_HIDE
        && joint.arrangement() == GlueUpRequest.Arrangement.IN_LINE
        && joint.lengthMetre() <= GlueUpFigures.RUBBED.high();
  }

  /**
   * The thinnest caul behind which so many clamps press a joint evenly, m; 0 or less if none is
   * needed, NaN if no caul helps because the usual spacing alone calls for more.
   */
  static double caulMetre(Joint joint, Clamps clamps) {
    double between = Math.max(0, joint.lengthMetre() - 2 * GlueUpFigures.END.low());
    double spacing = clamps.count() > 1 ? between / (clamps.count() - 1) : joint.lengthMetre();
    double limit =
        clamps.count() > 1 ? GlueUpFigures.SPACING.high() : GlueUpFigures.ONE_CLAMP.low();
    double fan = Math.max(spacing, 2 * GlueUpFigures.END.low());
    return spacing > limit ? Double.NaN : 0.5 * (fan - clamps.headMetre()) - joint.backingMetre();
  }

  /** The row for one group of joints; no clamps if the adhesive needs none. */
  static Row row(Joint joint, Clamps clamps, Pressure pressure, boolean clamped) {
    double spacing = spacingLimitMetre(joint.backingMetre(), clamps);
    if (!clamped) {
      return new Row(joint.name(), 0, 0, Governs.NONE, 0, 0, 0, spacing, List.of());
    }
    double area = joint.areaSquareMetre();
    int force = byForce(area, pressure.lowPascal(), clamps.forceNewton());
    int even = bySpacing(joint.lengthMetre(), spacing);
    Governs governs = force > even ? Governs.FORCE : Governs.SPACING;
    int room = Math.max(even, Math.min(clamps.count(), ClampRoom.most(joint, clamps)));
    int count = Math.min(Math.max(force, even), room);
    double wanted = area * pressure.targetPascal() / count;
    double each = Math.min(clamps.forceNewton(), wanted);
    double reached = count * each / area;
    List<Position> positions = positions(joint.lengthMetre(), count, endMetre(spacing));
    return new Row(joint.name(), force, even, governs, count, each, reached, spacing, positions);
  }

  private static double endMetre(double spacingMetre) {
    return Math.min(GlueUpFigures.END.low(), 0.5 * spacingMetre);
  }

  private static List<Position> positions(double lengthMetre, int count, double endMetre) {
    if (count == 1) {
      return List.of(new Position(0.5 * lengthMetre, true));
    }
    double end = Math.min(endMetre, lengthMetre / (2 * (double) count));
    double step = (lengthMetre - 2 * end) / (count - 1);
    List<Position> positions = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      positions.add(new Position(step * i + end, i % 2 == 0));
    }
    return positions;
  }
}
