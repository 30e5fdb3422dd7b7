package benchlore.schedules.sanding;

import benchlore.schedules.quantity.Numeric;
import java.util.ArrayList;
import java.util.List;

/**
 * One grade on one tool at work on one stock.
 *
 * <pre>
 * seconds = area x max(1 / cover, depth / rate)
 * rate    = tool's removal x (grain / 201 um)^1.3 x (4400 N / hardness)^0.5
 * removed = max(depth, rate / cover)
 * discs   = seconds / disc life, rounded up
 * </pre>
 *
 * <p>A pass must bring the whole face down to the bottom of the marks before it (depth), but can't
 * be quicker than one even covering pass. Valid for sharp paper and light, even pressure. Source:
 * none published was found; the form is the abrasive-wear law's (removal in proportion to path and
 * load) and the figures are from memory, set so that rough stock starts at P80 and planed stock at
 * P120 as two published sanding guides say. Known error: expect half to twice the time.
 *
 * @param grit the grade
 * @param tool the tool
 * @param secondsPerMicron working seconds for each micrometre of depth over the whole area
 * @param coverSeconds seconds of one covering pass over the whole area
 * @param lifeSeconds working life of a disc on this stock
 * @param handlingSeconds to take up and set down the pieces
 */
record AbrasiveCut(
    Grit grit,
    SandingTool tool,
    double secondsPerMicron,
    double coverSeconds,
    double lifeSeconds,
    double handlingSeconds) {

  /** This grade on every tool that takes it, in the tools' order. */
  static List<AbrasiveCut> of(Grit grit, SandedStock stock, List<SandingTool> tools) {
    double grain = grit.micron() / SandingFigures.REFERENCE_MICRON;
    double power = Numeric.pow(grain, SandingFigures.GRAIN_POWER.low());
    List<AbrasiveCut> all = new ArrayList<>();
    for (SandingTool tool : SandingTool.values()) {
      if (tools.contains(tool) && tool.takes(grit.micron())) {
        SandingTool.Row row = tool.row();
        double rate = row.removal() * power * stock.easeFactor();
        double area = stock.areaSquareMetre();
        double life = row.discLife().low() * stock.lifeFactor();
        double perMicron = area * 1e-6 / rate;
        double handling = stock.handlingSeconds();
        all.add(new AbrasiveCut(grit, tool, perMicron, area / row.cover(), life, handling));
      }
    }
    return all;
  }

  /** A full pass that takes the face down by a depth. */
  SandingPass pass(double depthMicron, double workMicron) {
    double work = Math.max(coverSeconds, workMicron * secondsPerMicron);
    double removed = Math.max(depthMicron, coverSeconds / secondsPerMicron);
    return made(work, depthMicron, removed);
  }

  /** A light pass that only dulls or de-fuzzes. */
  SandingPass lightPass(double depthMicron) {
    return made(coverSeconds * SandingFigures.LIGHT_SHARE.low(), depthMicron, depthMicron);
  }

  private SandingPass made(double work, double depthMicron, double removedMicron) {
    double share = work / lifeSeconds;
    int discs = Math.max(1, Numeric.ceil(share));
    double changes = SandingFigures.DISC_CHANGE.low() * (discs - 1);
    double seconds = work + changes + handlingSeconds + SandingFigures.GRADE_CHANGE.low();
    return new SandingPass(grit, tool, seconds, discs, share, depthMicron, removedMicron);
  }
}
