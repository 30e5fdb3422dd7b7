package benchlore.schedules.movement;

import benchlore.schedules.answer.Checks;
import benchlore.schedules.quantity.Unit;
import java.util.List;

/**
 * A solid panel to be screwed to something that doesn't move with it: a top on its frame, a hatch
 * on cleats across the grain.
 *
 * @param screwMetre shank of the screw, 0.001 to 0.02
 * @param distancesMetre how far each screw stands across the grain from the one place that is fixed
 *     tight (the middle, or one edge that must stay flush), each 0 to the panel's width; not empty
 */
public record Panel(double screwMetre, List<Double> distancesMetre) {
  /** Copies the list. */
  public Panel {
    distancesMetre = List.copyOf(distancesMetre);
  }

  void check(Checks checks, double widthMetre) {
    checks
        .within("panel.screwMetre", screwMetre, 0.001, 0.02, Unit.METRE)
        .require(
            !distancesMetre.isEmpty(),
            "panel.distancesMetre",
            "No screw was given.",
            "Give each screw's distance from the place that is fixed tight.");
    double most = widthMetre > 0 && widthMetre <= FitFigures.MOST_WIDTH_METRE ? widthMetre : 0;
    for (double distance : distancesMetre) {
      checks.within("panel.distancesMetre", distance, 0, most, Unit.METRE);
    }
  }
}
