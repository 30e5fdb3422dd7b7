package benchlore.schedules.glueup;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Refusal;
import benchlore.schedules.glueup.GlueUpRequest.Joint;
import benchlore.schedules.glueup.GlueUpRequest.Pace;
import benchlore.schedules.glueup.GlueUpSchedule.Pressure;
import benchlore.schedules.glueup.GlueUpSchedule.Row;
import benchlore.schedules.material.DensityClass;
import benchlore.schedules.quantity.SourcedRange;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Plans a glue-up: adhesive, time to close it in, batches, clamps, and when to unclamp, handle,
 * machine and load.
 *
 * <p>Durations come from the adhesive's record and run on the room's temperature curve; open times
 * take the short end, waits the long end. Rules and their sources stand in the working of each
 * answer. The label of the adhesive at hand decides where it differs.
 */
public final class GlueUp {
  private GlueUp() {}

  /**
   * Plans a glue-up.
   *
   * @param request what, with what, where and by whom
   * @return the schedule with its working and cautions; or refused: figures outside the request's
   *     ranges, air below the adhesive's minimum (at the start or while in clamps) or above its
   *     maximum, oily wood with an adhesive to avoid on it, a gap wider than it fills, too few
   *     clamps to press a joint evenly, or a joint that cannot be closed in time even alone
   */
  public static Answer<GlueUpSchedule> plan(GlueUpRequest request) {
    Objects.requireNonNull(request, "request");
    List<Refusal> nonsense = GlueUpChecks.refusals(request);
    if (!nonsense.isEmpty()) {
      return Answer.refuse(nonsense);
    }
    List<Refusal> stops = new ArrayList<>(Preconditions.before(request));
    Pressure pressure = pressure(request);
    List<Row> rows = ClampChoice.rows(request, pressure, 0);
    stops.addAll(Preconditions.rows(request, rows));
    if (!stops.isEmpty()) {
      return Answer.refuse(stops);
    }
    Optional<ClampChoice> chosen = ClampChoice.best(request, pressure);
    Optional<Milestones> moments = chosen.flatMap(c -> Milestones.of(request, c.batches()));
    if (moments.isEmpty()) {
      List<JointWork> tasks = tasks(request, rows, request.pace().people());
      return Answer.refuse(List.of(Preconditions.unplanned(request, tasks)));
    }
    return answer(request, schedule(request, pressure, chosen.get(), moments.get()));
  }

  private static Answer<GlueUpSchedule> answer(GlueUpRequest request, GlueUpSchedule schedule) {
    return Answer.of(
        schedule, GlueUpWorking.of(request, schedule), GlueUpCautions.of(request, schedule));
  }

  private static GlueUpSchedule schedule(
      GlueUpRequest request, Pressure pressure, ClampChoice chosen, Milestones moments) {
    return new GlueUpSchedule(
        GlueNeed.of(request.joints(), request.adhesive()),
        BatchLimits.at(request, request.start()).assembly(),
        pressure,
        chosen.rows(),
        chosen.batches(),
        moments.clampsOff(),
        moments.handle(),
        moments.machine(),
        moments.fullLoad());
  }

  private static Pressure pressure(GlueUpRequest request) {
    DensityClass density = DensityClass.of(request.wood().densityKilogramPerCubicMetre());
    SourcedRange range = density.pressureOf(request.adhesive());
    return new Pressure(density, range.low(), range.high(), range.mid());
  }

  /** Every joint as work for so many people, in the order given. */
  static List<JointWork> tasks(GlueUpRequest request, List<Row> rows, int people) {
    Pace given = request.pace();
    Pace pace =
        new Pace(
            given.perJointSecond(), given.perSquareMetreSecond(), given.perClampSecond(), people);
    List<JointWork> tasks = new ArrayList<>();
    for (int group = 0; group < rows.size(); group++) {
      Joint joint = request.joints().get(group);
      JointWork task = JointWork.of(group, joint, rows.get(group), pace);
      for (int i = 0; i < joint.count(); i++) {
        tasks.add(task);
      }
    }
    return tasks;
  }
}
