package benchlore.schedules.glueup;

import benchlore.schedules.material.Adhesive;
import benchlore.schedules.quantity.SourcedRange;

/**
 * How damp the wood may be for an adhesive: what its record states, else the usual limits.
 *
 * <p>Glues that bring water want dry wood, or it has nowhere to go; epoxy wants it dry because the
 * bond lets go as damp wood shrinks; one-part polyurethane lives on the wood's water.
 */
final class WoodLimits {
  private WoodLimits() {}

  /** With care above its low end, not at all above its high end; percent. */
  static SourcedRange most(Adhesive adhesive) {
    return adhesive.air().wood().mostWoodMoisture().orElse(GlueUpFigures.DAMP_TO_WETTEST);
  }

  /** Below its high end the wood drinks the adhesive or gives it no water; percent. */
  static SourcedRange least(Adhesive adhesive) {
    return adhesive
        .air()
        .wood()
        .leastWoodMoisture()
        .orElse(livesOnWater(adhesive) ? GlueUpFigures.FOAMING_DRY : GlueUpFigures.DRY);
  }

  /** True if it takes the water it cures by from the wood. */
  static boolean livesOnWater(Adhesive adhesive) {
    return adhesive.setting() == Adhesive.Setting.MOISTURE_REACTION;
  }
}
