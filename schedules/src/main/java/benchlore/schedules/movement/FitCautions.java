package benchlore.schedules.movement;

import benchlore.schedules.answer.Caution;
import benchlore.schedules.caution.FitRows;
import benchlore.schedules.movement.FitSchedule.Moistures;
import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.quantity.Unit;
import java.util.ArrayList;
import java.util.List;

/**
 * What to watch for when wood is fitted. All are about the work; nobody is hurt by a tight drawer.
 */
final class FitCautions {
  private final FitRequest request;
  private final FitSchedule schedule;
  private final List<Caution> cautions = new ArrayList<>();

  FitCautions(FitRequest request, FitSchedule schedule) {
    this.request = request;
    this.schedule = schedule;
  }

  List<Caution> all() {
    seasons();
    moisture();
    settling();
    schedule.clearance().ifPresent(this::clearance);
    schedule.fixing().ifPresent(this::fixing);
    return cautions;
  }

  private void seasons() {
    if (request.seasons().from().kind() == Provenance.Kind.FROM_MEMORY) {
      cautions.add(FitRows.SEASONS_ARE_A_GUESS.caution());
    }
  }

  private void moisture() {
    Moistures moisture = schedule.moisture();
    if (moisture.dryPercent() < FitFigures.LINE_LOW_PERCENT
        || moisture.dampPercent() > FitFigures.LINE_HIGH_PERCENT) {
      cautions.add(
          FitRows.MOVEMENT_OUTSIDE_STRAIGHT_RANGE.caution(
              percent(moisture.dryPercent()),
              percent(moisture.dampPercent()),
              percent(FitFigures.LINE_LOW_PERCENT),
              percent(FitFigures.LINE_HIGH_PERCENT)));
    }
    double off = request.moisturePercent() - moisture.middlePercent();
    if (Math.abs(off) > FitFigures.OFF_MIDDLE_POINTS) {
      cautions.add(
          FitRows.WOOD_OFF_SERVICE_MOISTURE.caution(
              percent(request.moisturePercent()), percent(moisture.middlePercent())));
    }
  }

  private void settling() {
    if (schedule.settling().highSecond() > 0) {
      cautions.add(
          FitRows.LET_WOOD_SETTLE.caution(
              Quantity.of(schedule.settling().lowSecond(), Unit.SECOND),
              Quantity.of(schedule.settling().highSecond(), Unit.SECOND)));
      if (request.shop().celsius() < FitFigures.SLOW_CELSIUS) {
        cautions.add(FitRows.COLD_WOOD_SETTLES_SLOWLY.caution());
      }
    }
  }

  private void clearance(FitSchedule.Clearance clearance) {
    cautions.add(FitRows.DRY_FIT_FIRST.caution());
    if (clearance.stacks().isEmpty()) {
      cautions.add(
          FitRows.GAP_TOO_WIDE_FOR_TAPE.caution(Quantity.of(clearance.gapMetre(), Unit.METRE)));
    }
    if (clearance.drySeasonGapMetre() > FitFigures.WIDE_GAP_METRE) {
      cautions.add(
          FitRows.WIDE_GAP_WHEN_DRY.caution(
              Quantity.of(clearance.drySeasonGapMetre(), Unit.METRE)));
    }
  }

  private void fixing(FitSchedule.Fixing fixing) {
    if (!fixing.rigidAllowed()) {
      cautions.add(FitRows.PANEL_MUST_MOVE.caution());
    }
  }

  private static Quantity percent(double value) {
    return Quantity.of(value, Unit.PERCENT);
  }
}
