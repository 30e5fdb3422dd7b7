package benchlore.schedules.cutting;

import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.Caution.Severity;
import benchlore.schedules.answer.Message;
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
    add(
        "router-eyes-ears-lungs",
        Severity.HEALTH,
        "Chips fly, the noise harms hearing and fine dust harms lungs.",
        "Wear glasses, ear protection and a dust mask, and use extraction.");
    add(
        "unplug-to-change-bit",
        Severity.DANGER,
        "A bit that starts while your hand is on it cuts to the bone.",
        "Pull the plug before you touch bit or collet.");
    if (request.stock() == CutMaterial.MDF) {
      add(
          "mdf-dust",
          Severity.HEALTH,
          "Sheet made with formaldehyde resin gives very fine dust.",
          "Extract at the cut and wear a fitted particle respirator.");
    }
  }

  private void climb() {
    if (request.machine().kind().driven()) {
      add(
          "climb-cut-only-held",
          Severity.WORK,
          "Cutting with the turning of the bit pulls work and machine along.",
          "Rough against the turning; climb only a skim, with the work held all over.");
    } else {
      add(
          "climb-cut",
          Severity.DANGER,
          "Moved with the turning of the bit, the router bolts or tears the work from your hands.",
          "Always move against the turning, as described, with work or router held firmly.");
    }
  }

  private void speed() {
    Bit bit = request.bit();
    if (bit.diameterMetre() > CuttingFigures.TABLE_ONLY_DIAMETER_METRE
        && request.machine().kind() == Machine.Kind.HAND_ROUTER) {
      add(
          "large-bit-in-table-only",
          Severity.DANGER,
          "A bit this large is hard to hold against and may catch.",
          "Use it in a router table with a fence and guard, at low speed and small passes.");
    }
  }

  private void feed() {
    if (schedule.feed().highChipMetre() < CuttingFigures.RUBBING_METRE) {
      cautions.add(
          new Caution(
              "bit-rubs",
              Severity.WORK,
              Message.of(
                  "The chip is only {0} thick: the bit rubs, burns the wood and soon goes dull.",
                  Quantity.of(schedule.feed().highChipMetre(), Unit.METRE)),
              Message.of(
                  "Turn slower, use fewer flutes, or move faster; never pause in the cut.")));
    }
  }

  private void depth() {
    if (request.depthMetre() > request.bit().cuttingLengthMetre()) {
      add(
          "deeper-than-edges",
          Severity.DANGER,
          "The cut is deeper than the edges are long; the shank may rub, burn or jam.",
          "Check the bit's reach first, or use a longer bit.");
    }
  }

  private void add(String code, Severity severity, String what, String measure) {
    cautions.add(new Caution(code, severity, Message.of(what), Message.of(measure)));
  }
}
