package benchlore.schedules.cutting;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Checks;
import benchlore.schedules.answer.Message;
import benchlore.schedules.answer.Refusal;
import benchlore.schedules.answer.WorkingLine;
import benchlore.schedules.cutting.CuttingSchedule.Feed;
import benchlore.schedules.cutting.CuttingSchedule.Passes;
import benchlore.schedules.cutting.CuttingSchedule.Speed;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;
import java.util.ArrayList;
import java.util.List;

/** Router and CNC cutting: one entry for a cut, one each for tabs, surfacing and reach. */
public final class Cutting {
  private Cutting() {}

  /**
   * Speed, feed, passes and direction of one cut.
   *
   * @param request figures of any size; see {@link CuttingRequest} for the ranges accepted
   * @return the schedule with working and cautions, or every reason why not: among them a speed
   *     above what the bit stands and a router that can't turn slowly enough
   */
  public static Answer<CuttingSchedule> plan(CuttingRequest request) {
    Checks checks = check(request);
    if (!checks.isValid()) {
      return Answer.refuse(checks.refusals());
    }
    CuttingPlan plan = new CuttingPlan(request);
    Passes passes = plan.passes();
    SourcedRange chip = plan.chip(passes.depthMetre());
    Speed speed = plan.speed(chip);
    Feed feed = plan.feed(speed.rpm(), chip);
    CuttingSchedule schedule =
        new CuttingSchedule(
            speed, feed, passes, Directions.of(request.machine().kind(), request.side()));
    List<WorkingLine> working = new ArrayList<>();
    working.add(plan.passLine(passes));
    if (passes.trimPasses() > 0) {
      working.add(plan.trimLine(passes));
    }
    working.add(plan.speedLine(speed));
    working.add(plan.rimLine(speed));
    working.add(plan.chipLine(chip, passes.depthMetre()));
    working.add(plan.feedLine(speed, feed));
    return Answer.of(schedule, working, new CuttingCautions(request, schedule).all());
  }

  /**
   * Tabs that hold a part in its sheet, and the cut to leave for last.
   *
   * @param request figures of any size; see {@link TabsRequest} for the ranges accepted
   * @return the tabs, or every reason why not: among them a part too small for tabs
   */
  public static Answer<Tabs> plan(TabsRequest request) {
    return new TabsPlan(request).plan();
  }

  /**
   * Strokes, path and time to flatten a surface.
   *
   * @param request figures of any size; see {@link SurfacingRequest} for the ranges accepted
   * @return the strokes, or every reason why not
   */
  public static Answer<Surfacing> plan(SurfacingRequest request) {
    return new SurfacingPlan(request).plan();
  }

  /**
   * Whether a bit can make a cut: length of edges, shank, grip in the collet, bearing on its
   * template. A bit that can't is an answer with problems, not a refusal.
   *
   * @param request figures of any size; see {@link ReachRequest} for the ranges accepted
   * @return what was found, or every reason why it can't be told
   */
  public static Answer<Reach> plan(ReachRequest request) {
    return new ReachPlan(request).plan();
  }

  private static Checks check(CuttingRequest request) {
    Checks checks = new Checks();
    request.bit().check(checks);
    request.machine().check(checks);
    checks
        .within("depthMetre", request.depthMetre(), 0.0001, 0.15, Unit.METRE)
        .within("trim.leftMetre", request.trim().leftMetre(), 0, 0.05, Unit.METRE)
        .within("trim.biteMetre", request.trim().biteMetre(), 0.0001, 0.01, Unit.METRE);
    if (checks.isValid() && request.wantedRpm().isPresent()) {
      Machine machine = request.machine();
      checks.within(
          "wantedRpm",
          request.wantedRpm().getAsDouble(),
          machine.lowestRpm(),
          machine.highestRpm(),
          Unit.RPM);
    }
    if (checks.isValid()) {
      checkPass(request, checks);
      checkSpeed(request, checks);
    }
    return checks;
  }

  private static void checkPass(CuttingRequest request, Checks checks) {
    if (request.wantedPassMetre().isPresent()) {
      double most =
          request.machine().kind().driven()
              ? CuttingFigures.MOST_PASS_DIAMETERS * request.bit().diameterMetre()
              : CuttingFigures.HAND_PASS_METRE;
      checks.within(
          "wantedPassMetre", request.wantedPassMetre().getAsDouble(), 0.0001, most, Unit.METRE);
    }
  }

  private static void checkSpeed(CuttingRequest request, Checks checks) {
    double highest = request.bit().highestRpm();
    Quantity limit = Quantity.of(highest, Unit.RPM);
    if (request.machine().lowestRpm() > highest) {
      checks.add(
          new Refusal(
              "machine.lowestRpm",
              Message.of("This machine can't turn slowly enough for the bit; it may fly apart."),
              Message.of("Use a machine that runs at {0} or less, or a smaller bit.", limit)));
    }
    if (request.wantedRpm().isPresent() && request.wantedRpm().getAsDouble() > highest) {
      checks.add(
          new Refusal(
              "wantedRpm",
              Message.of("That is faster than this bit may turn; it may fly apart."),
              Message.of("Run at {0} or less.", limit)));
    }
  }
}
