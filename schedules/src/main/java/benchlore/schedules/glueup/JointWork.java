package benchlore.schedules.glueup;

import benchlore.schedules.glueup.GlueUpRequest.Arrangement;
import benchlore.schedules.glueup.GlueUpRequest.Joint;
import benchlore.schedules.glueup.GlueUpRequest.Pace;
import benchlore.schedules.glueup.GlueUpSchedule.Row;

/**
 * The work one joint of a group is.
 *
 * @param group place of the group in the request
 * @param joint the group
 * @param row its clamps
 * @param spreadSecond to spread and bring together one joint
 * @param clampSecond to set one row of clamps, as many as the joint calls for even if the shelf is
 *     short: fewer clamps are each screwed up harder, not faster
 */
record JointWork(int group, Joint joint, Row row, double spreadSecond, double clampSecond) {
  /** The work of one joint of this group at this pace. */
  static JointWork of(int group, Joint joint, Row row, Pace pace) {
    double hands = GlueUpFigures.hands(pace.people());
    double spread = joint.areaSquareMetre() * pace.perSquareMetreSecond() + pace.perJointSecond();
    int clamps = Math.max(row.neededForForce(), row.neededForSpacing());
    return new JointWork(group, joint, row, spread / hands, clamps * pace.perClampSecond() / hands);
  }

  /** Clamps one row takes up while only so many are to be used. */
  int clamps(int limit) {
    return Math.min(limit, Math.max(row.neededForForce(), row.neededForSpacing()));
  }

  /** True if one row of clamps presses every joint of the group. */
  boolean inLine() {
    return joint.arrangement() == Arrangement.IN_LINE;
  }
}
