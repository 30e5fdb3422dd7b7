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
 * @param clampSecond to set one row of clamps, those of the shelf that it gets
 */
record JointWork(int group, Joint joint, Row row, double spreadSecond, double clampSecond) {
  /** The work of one joint of this group at this pace. */
  static JointWork of(int group, Joint joint, Row row, Pace pace) {
    double hands = GlueUpFigures.hands(pace.people());
    double spread = joint.areaSquareMetre() * pace.perSquareMetreSecond() + pace.perJointSecond();
    double clamp = row.count() * pace.perClampSecond();
    return new JointWork(group, joint, row, spread / hands, clamp / hands);
  }

  /** Clamps one row takes up. */
  int clamps() {
    return row.count();
  }

  /** True if one row of clamps presses every joint of the group. */
  boolean inLine() {
    return joint.arrangement() == Arrangement.IN_LINE;
  }
}
