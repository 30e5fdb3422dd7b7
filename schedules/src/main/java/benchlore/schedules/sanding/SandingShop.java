package benchlore.schedules.sanding;

import java.util.ArrayList;
import java.util.List;

/**
 * What is to hand.
 *
 * @param shelf grades on the shelf, any order and either scale; at least one
 * @param tools tools to hand; at least one
 * @param jumpLimitRatio most that one grade's grain may exceed the next one's, 1.15 to 3; {@link
 *     #USUAL_JUMP} unless there is a reason
 */
public record SandingShop(List<Grit> shelf, List<SandingTool> tools, double jumpLimitRatio) {
  /**
   * The usual limit: 1.7 lets P80 go to P120, P120 to P180 and P150 to P220 but not P80 to P150 or
   * P120 to P220: at most one everyday grade is skipped. Common practice.
   */
  public static final double USUAL_JUMP = 1.7;

  /** Copies the lists. */
  public SandingShop {
    shelf = List.copyOf(shelf);
    tools = List.copyOf(tools);
  }

  /** Whether a grade is on the shelf. */
  boolean has(Grit grit) {
    return shelf.contains(grit);
  }

  /** The same shop with one more grade. */
  public SandingShop withGrit(Grit grit) {
    ArrayList<Grit> more = new ArrayList<>(shelf);
    more.add(grit);
    return new SandingShop(more, tools, jumpLimitRatio);
  }
}
