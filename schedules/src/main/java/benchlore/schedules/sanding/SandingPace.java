package benchlore.schedules.sanding;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Checks;
import benchlore.schedules.answer.WorkingLine;
import benchlore.schedules.quantity.Figure;
import benchlore.schedules.quantity.Unit;
import java.util.List;
import java.util.Objects;

/**
 * How fast one grade on one tool works: a row of a minutes-a-square-metre table.
 *
 * @param secondsPerSquareMetre working time to take out the marks, cleaning and disc changes left
 *     out
 * @param discsPerSquareMetre share of a disc's life that takes
 * @param scratchMicron depth of the scratches the grade leaves in turn
 */
record SandingPace(double secondsPerSquareMetre, double discsPerSquareMetre, double scratchMicron) {

  /**
   * The pace of a grade; from memory like every removal rate here, so out by a factor of two.
   *
   * @param grit the grade
   * @param tool the tool; refused if it isn't used with so fine a grade
   * @param wood the wood
   * @param depthMicron depth of the marks to take out, 1 to 5000
   * @return the pace with its working
   */
  static Answer<SandingPace> plan(
      Grit grit, SandingTool tool, SandingWood wood, double depthMicron) {
    Objects.requireNonNull(grit, "grit");
    Objects.requireNonNull(tool, "tool");
    Objects.requireNonNull(wood, "wood");
    Checks checks = new Checks();
    StartDepths.checkDepth(checks, "depthMicron", depthMicron);
    SandingChecks.wood(checks, wood);
    checks.require(
        tool.takes(grit.micron()),
        "tool",
        "This tool isn't used with so fine a grade.",
        "Take a random-orbit sander or a block for it.");
    if (!checks.isValid()) {
      return Answer.refuse(checks.refusals());
    }
    SandedStock stock = SandedStock.wood(wood, 1, false);
    AbrasiveCut cutting = AbrasiveCut.of(grit, stock, List.of(tool)).get(0);
    double seconds = Math.max(cutting.coverSeconds(), depthMicron * cutting.secondsPerMicron());
    double discs = seconds / cutting.lifeSeconds();
    SandingPace pace = new SandingPace(seconds, discs, stock.scratchMicron(grit));
    Figure hardness = Figure.input("side hardness", wood.hardnessNewton(), Unit.NEWTON);
    WorkingLine whole =
        SandingWorking.pass(cutting.pass(depthMicron, depthMicron), 1, List.of(hardness));
    return Answer.of(pace, List.of(whole), List.of());
  }
}
