package benchlore.schedules.sanding;

import benchlore.schedules.answer.Caution;
import benchlore.schedules.caution.SandingRows;
import benchlore.schedules.caution.ShopRows;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.quantity.Unit;
import java.util.ArrayList;
import java.util.List;

/** What to watch for in a schedule. Dust is always among it. */
final class SandingCautions {
  private final List<Caution> cautions = new ArrayList<>();

  private SandingCautions() {}

  static List<Caution> of(SandingRequest request, StartDepth start, SandingSchedule schedule) {
    SandingCautions all = new SandingCautions();
    all.health(start, schedule);
    all.surface(request, start);
    all.passes(request, schedule);
    all.extras(request, schedule);
    return all.cautions;
  }

  private void health(StartDepth start, SandingSchedule schedule) {
    if (start.filmMicron() > 0) {
      cautions.add(SandingRows.OLD_FILM_LEAD.caution());
    }
    cautions.add(ShopRows.WOOD_DUST.caution());
    if (start.filmMicron() > 0 || schedule.extras().betweenCoats().isPresent()) {
      cautions.add(ShopRows.FINISH_DUST_FIRE.caution());
    }
  }

  private void surface(SandingRequest request, StartDepth start) {
    if (start.depthMicron() > SandingFigures.PLANE_ABOVE.low()) {
      cautions.add(
          SandingRows.TOO_DEEP_TO_SAND.caution(Quantity.of(start.depthMicron(), Unit.MICRON)));
    }
    if (request.start() instanceof StartSurface.Planed planed
        && planed.knifePitchMetre() > SandingFigures.KNIFE_PITCH.high()) {
      knifeMarks();
    }
    if (Sanding.target(request, start).isPassedBy(start.grainMicron())) {
      cautions.add(SandingRows.SANDED_TOO_FINE.caution());
    }
    if (request.wood().soft() && !start.light()) {
      cautions.add(SandingRows.SOFT_WOOD.caution());
    }
  }

  private void knifeMarks() {
    double pitch = SandingFigures.KNIFE_PITCH.high();
    cautions.add(SandingRows.COARSE_KNIFE_MARKS.caution(Quantity.of(pitch, Unit.METRE)));
  }

  private void passes(SandingRequest request, SandingSchedule schedule) {
    boolean cami = false;
    boolean belt = false;
    for (SandingPass pass : schedule.passes()) {
      cami = cami || pass.grit().system() == GritSystem.CAMI;
      belt = belt || pass.tool() == SandingTool.BELT;
    }
    if (cami) {
      cautions.add(SandingRows.TWO_SCALES.caution());
    }
    if (belt) {
      cautions.add(SandingRows.BELT_DIGS.caution());
    }
    if (opensTooFine(request, schedule)) {
      cautions.add(SandingRows.LONG_PASS.caution());
    }
  }

  private static boolean opensTooFine(SandingRequest request, SandingSchedule schedule) {
    if (schedule.passes().isEmpty()) {
      return false;
    }
    SandingPass first = schedule.passes().get(0);
    for (Grit grit : request.shop().shelf()) {
      if (grit.micron() > first.grit().micron()) {
        return false;
      }
    }
    double area = request.area().totalSquareMetre();
    return first.seconds() - SandingFigures.GRADE_CHANGE.low()
        > area * SandingFigures.LONG_PASS.low();
  }

  private void extras(SandingRequest request, SandingSchedule schedule) {
    if (request.wood().figured() && !schedule.passes().isEmpty()) {
      cautions.add(SandingRows.FIGURED_LAST_STROKES.caution());
    }
    if (request.wood().openGrained() && !request.wanted().poresFilled()) {
      cautions.add(SandingRows.PORES_STAY_OPEN.caution());
    }
    schedule.extras().grainRaising().ifPresent(raising -> knockOff());
    buy(request, schedule.extras());
  }

  private void knockOff() {
    cautions.add(SandingRows.KNOCK_OFF_LIGHTLY.caution());
  }

  private void buy(SandingRequest request, SandingExtras extras) {
    List<Grit> needed = new ArrayList<>();
    extras.endGrain().ifPresent(pass -> needed.add(pass.grit()));
    extras.betweenCoats().ifPresent(between -> needed.add(between.each().grit()));
    for (Grit grit : needed) {
      boolean there = request.shop().has(grit);
      if (!there && request.start() instanceof StartSurface.SandedTo sanded) {
        there = sanded.grit().equals(grit);
      }
      if (!there) {
        cautions.add(SandingRows.GRADE_TO_BUY.with("grade", grit.label()).caution());
      }
    }
  }
}
