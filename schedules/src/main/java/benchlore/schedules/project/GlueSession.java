package benchlore.schedules.project;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.glueup.GlueUpSchedule;
import benchlore.schedules.time.Interval;

/**
 * One glue-up booked in the shop's hours.
 *
 * @param label what is glued
 * @param work when
 * @param unclamp when the clamps come off
 * @param answer the engine's schedule for it; its first batch is this session
 * @param jointingSecond of it, before the glue, to joint the edges and clamp up dry; 0 if that was
 *     done before
 */
record GlueSession(
    String label,
    Interval work,
    Interval unclamp,
    Answer.Given<GlueUpSchedule> answer,
    double jointingSecond) {
  GlueUpSchedule.Batch batch() {
    return answer.value().batches().get(0);
  }

  /** Joints the first batch leaves for another session. */
  int jointsLeft() {
    int left = 0;
    for (int i = 1; i < answer.value().batches().size(); i++) {
      for (GlueUpSchedule.Share share : answer.value().batches().get(i).shares()) {
        left = left + share.count();
      }
    }
    return left;
  }
}
