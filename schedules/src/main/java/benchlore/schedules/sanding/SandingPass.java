package benchlore.schedules.sanding;

import benchlore.schedules.answer.Message;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.quantity.Unit;

/**
 * One grade, once over.
 *
 * @param grit the grade
 * @param tool the tool
 * @param seconds hands-on time with cleaning, looking and disc changes
 * @param discs discs, sheets or belts used up in this pass, rounded up, at least 1
 * @param discShare the same unrounded; over several parts add these, then round up
 * @param depthMicron depth of the marks it must take out, micrometres
 * @param removedMicron material it takes off, micrometres; not less than the depth
 */
public record SandingPass(
    Grit grit,
    SandingTool tool,
    double seconds,
    int discs,
    double discShare,
    double depthMicron,
    double removedMicron) {

  /** Why this pass is there and when it is done, for the shop. */
  public Message why() {
    return Message.of(
        grit.label()
            + " with "
            + tool.words()
            + ": takes out marks {0} deep. Done when none of the older marks show in raking light.",
        Quantity.of(depthMicron, Unit.MICRON));
  }
}
