package benchlore.schedules.glueup;

import benchlore.schedules.glueup.GlueUpSchedule.Assembly;
import benchlore.schedules.glueup.GlueUpSchedule.Order;
import benchlore.schedules.material.Adhesive;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A batch being filled.
 *
 * @param tasks joints in it, in order
 * @param spreadSecond to spread all of them
 * @param longestSecond to spread the longest of them
 * @param clampSecond to set all clamps
 * @param clamps clamps taken up
 */
record BatchBuilder(
    List<JointWork> tasks,
    double spreadSecond,
    double longestSecond,
    double clampSecond,
    int clamps) {
  static final BatchBuilder EMPTY = new BatchBuilder(List.of(), 0, 0, 0, 0);

  /** All of these in one go. */
  static BatchBuilder of(List<JointWork> tasks) {
    BatchBuilder draft = EMPTY;
    for (JointWork task : tasks) {
      draft = draft.with(task);
    }
    return draft;
  }

  /** With one joint more. */
  BatchBuilder with(JointWork task) {
    List<JointWork> more = new ArrayList<>(tasks);
    more.add(task);
    boolean newRow = !task.inLine() || !holds(task.group());
    return new BatchBuilder(
        List.copyOf(more),
        spreadSecond + task.spreadSecond(),
        Math.max(longestSecond, task.spreadSecond()),
        clampSecond + (newRow ? task.clampSecond() : 0),
        clamps + (newRow ? task.clamps() : 0));
  }

  /**
   * An order in which it closes in time: all spread first if the open time allows, else each joint
   * brought together as soon as it is spread, so that the rest of the work counts as closed time.
   */
  Optional<Order> orderWithin(BatchLimits limits) {
    Assembly assembly = limits.assembly();
    if (spreadSecond > limits.potSecond()) {
      return Optional.empty();
    }
    double waited = assembly.waitSecond() + spreadSecond;
    if (waited <= assembly.openSecond() && clampSecond <= assembly.closedSecond()) {
      return Optional.of(Order.SPREAD_ALL);
    }
    double afterFirst = spreadSecond - tasks.get(0).spreadSecond();
    boolean touches = assembly.waitSecond() + longestSecond <= assembly.openSecond();
    if (touches && afterFirst + clampSecond <= assembly.closedSecond()) {
      return Optional.of(Order.JOINT_BY_JOINT);
    }
    return Optional.empty();
  }

  /** Adhesive for it, kg. */
  double massKilogram(Adhesive adhesive) {
    double area = 0;
    for (JointWork task : tasks) {
      area = area + task.joint().areaSquareMetre();
    }
    return GlueNeed.massKilogram(area, adhesive);
  }

  /** True if a joint of this group is in it. */
  boolean holds(int group) {
    for (JointWork task : tasks) {
      if (task.group() == group) {
        return true;
      }
    }
    return false;
  }
}
