package benchlore.schedules.air;

import benchlore.schedules.answer.Checks;
import benchlore.schedules.answer.Message;
import benchlore.schedules.answer.Refusal;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.quantity.Unit;

/** Refuses a plan whose air would be too dangerous to be in, saying how much air it would take. */
final class PredictedRefusals {
  private PredictedRefusals() {}

  static void check(AirRequest request, AirSchedule schedule, Checks checks) {
    fire(request, schedule, checks);
    double index = RespiratorChoice.NEAR_WORK * schedule.worstIndex();
    if (index > Respirator.FULL_FACE_VAPOUR.protectionFactor().orElseThrow()) {
      add(
          "Close to the work the air would hold {0} times what may be breathed, more than any"
              + " filtering mask takes.",
          Quantity.of(index, Unit.RATIO), schedule, checks);
    }
    double danger = schedule.peaks().dangerShare().map(p -> p.value()).orElse(0.0);
    if (danger >= 1) {
      add(
          "The room's air would reach {0} times the level immediately dangerous to life or health;"
              + " no filtering mask may be used there.",
          Quantity.of(danger, Unit.RATIO), schedule, checks);
    }
  }

  private static void fire(AirRequest request, AirSchedule schedule, Checks checks) {
    double explosive = schedule.peaks().percentLowerExplosive().map(p -> p.value()).orElse(0.0);
    Quantity percent = Quantity.of(explosive, Unit.PERCENT);
    if (explosive >= FireRule.QUARTER.percent()) {
      add(
          "The room's air would reach {0} of the lower explosive limit; nearer the work it is"
              + " richer and could burn.",
          percent, schedule, checks);
    } else if (explosive >= FireRule.TENTH.percent() && sparks(request)) {
      add(
          "The room's air would reach {0} of the lower explosive limit with sparking equipment in"
              + " it.",
          percent, schedule, checks);
    }
  }

  private static boolean sparks(AirRequest request) {
    return request.ignitionSources().contains(IgnitionSource.BRUSHED_MOTOR)
        || request.ignitionSources().contains(IgnitionSource.UNRATED_ELECTRICAL);
  }

  private static void add(String problem, Quantity how, AirSchedule schedule, Checks checks) {
    checks.add(
        new Refusal(
            "room.outdoorFlow",
            Message.of(problem, how),
            Message.of(
                "Give at least {0} of outdoor air, coat less at a time, work outdoors, or choose a"
                    + " waterborne finish.",
                Quantity.of(schedule.flow().governing(), Unit.CUBIC_METRE_PER_SECOND))));
  }
}
