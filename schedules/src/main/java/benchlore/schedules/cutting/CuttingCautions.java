package benchlore.schedules.cutting;

import benchlore.schedules.answer.Caution;
import benchlore.schedules.caution.CuttingRows;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.quantity.Unit;
import java.util.ArrayList;
import java.util.List;

/** What to watch for in one cut. */
final class CuttingCautions {
  private final CuttingRequest request;
  private final CuttingSchedule schedule;
  private final List<Caution> cautions = new ArrayList<>();

  CuttingCautions(CuttingRequest request, CuttingSchedule schedule) {
    this.request = request;
    this.schedule = schedule;
  }

  List<Caution> all() {
    always();
    climb();
    speed();
    feed();
    depth();
    return cautions;
  }

  private void always() {
    cautions.add(CuttingRows.ROUTER_EYES_EARS_LUNGS.caution());
    cautions.add(CuttingRows.UNPLUG_TO_CHANGE_BIT.caution());
    if (request.stock() == CutMaterial.MDF) {
      cautions.add(CuttingRows.MDF_DUST.caution());
    }
  }

  private void climb() {
    if (request.machine().kind().driven()) {
      cautions.add(CuttingRows.CLIMB_CUT_ONLY_HELD.caution());
    } else {
      cautions.add(CuttingRows.CLIMB_CUT.caution());
    }
  }

  private void speed() {
    Bit bit = request.bit();
    if (bit.diameterMetre() > CuttingFigures.TABLE_ONLY_DIAMETER_METRE
        && request.machine().kind() == Machine.Kind.HAND_ROUTER) {
      cautions.add(CuttingRows.LARGE_BIT_IN_TABLE_ONLY.caution());
    }
  }

  private void feed() {
    if (schedule.feed().highChipMetre() < CuttingFigures.RUBBING_METRE) {
      cautions.add(
          CuttingRows.BIT_RUBS.caution(Quantity.of(schedule.feed().highChipMetre(), Unit.METRE)));
    }
  }

  private void depth() {
    if (request.depthMetre() > request.bit().cuttingLengthMetre()) {
      cautions.add(CuttingRows.DEEPER_THAN_EDGES.caution());
    }
  }
}
