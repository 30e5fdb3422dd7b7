package benchlore.schedules.movement;

import benchlore.schedules.answer.QuantityKey;
import benchlore.schedules.answer.WorkingLine;
import benchlore.schedules.movement.FitSchedule.Fixing;
import benchlore.schedules.movement.FitSchedule.Slot;
import benchlore.schedules.quantity.Figure;
import benchlore.schedules.quantity.Unit;
import java.util.ArrayList;
import java.util.List;

/**
 * How a solid panel is screwed down.
 *
 * <pre>
 * travel at a screw = its distance from the tight place x travel of the whole width / width
 * slot = screw + swelling there + shrinking there + spare
 * tight holes are allowed if the farthest screw travels no more than 0.8 mm in the year
 * </pre>
 *
 * <p>Common practice; the 0.8 mm (1/32 in) limit is from memory, and a thin or brittle panel may
 * split below it.
 */
final class FixingPlan {
  private final Panel panel;
  private final double swellStrain;
  private final double shrinkStrain;

  FixingPlan(Panel panel, FitSchedule.Travel travel, double widthMetre) {
    this.panel = panel;
    this.swellStrain = travel.swellMetre() / widthMetre;
    this.shrinkStrain = travel.shrinkMetre() / widthMetre;
  }

  Fixing fixing() {
    List<Slot> slots = new ArrayList<>();
    boolean rigid = true;
    for (double distance : panel.distancesMetre()) {
      double inward = distance * swellStrain;
      double outward = distance * shrinkStrain;
      rigid = rigid && inward + outward <= FitFigures.RIGID_METRE;
      double length = panel.screwMetre() + inward + outward + FitFigures.SLOT_SPARE_METRE;
      slots.add(new Slot(distance, length, outward, inward));
    }
    return new Fixing(rigid, slots);
  }

  List<WorkingLine> working(Fixing fixing) {
    List<WorkingLine> lines = new ArrayList<>();
    for (Slot slot : fixing.slots()) {
      lines.add(
          new WorkingLine(
              QuantityKey.SLOT_LENGTH,
              Figure.computed("slot", slot.lengthMetre(), Unit.METRE),
              "slot = screw + swelling there + shrinking there + spare",
              List.of(
                  Figure.input("distance from tight place", slot.distanceMetre(), Unit.METRE),
                  Figure.input("screw", panel.screwMetre(), Unit.METRE),
                  Figure.computed("swelling there", slot.inwardMetre(), Unit.METRE),
                  Figure.computed("shrinking there", slot.outwardMetre(), Unit.METRE),
                  Figure.of(
                      "spare", FitFigures.SLOT_SPARE_METRE, Unit.METRE, FitSources.SLOT_SPARE)),
              FitSources.SLOT));
    }
    lines.add(rigidLine(fixing));
    return lines;
  }

  private static WorkingLine rigidLine(Fixing fixing) {
    double most = 0;
    for (Slot slot : fixing.slots()) {
      most = Math.max(most, slot.inwardMetre() + slot.outwardMetre());
    }
    return new WorkingLine(
        QuantityKey.MOST_TRAVEL_AT_A_SCREW,
        Figure.computed("most travel at a screw", most, Unit.METRE),
        "tight holes will do if this is no more than the limit",
        List.of(Figure.of("limit", FitFigures.RIGID_METRE, Unit.METRE, FitSources.RIGID)),
        FitSources.RIGID);
  }
}
