package benchlore.schedules.air;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Checks;
import benchlore.schedules.material.ApplicationMethod;
import benchlore.schedules.material.Finish;
import benchlore.schedules.material.Hazards;
import java.util.Objects;

/**
 * Solvent vapour in a shop: how much gets into the air of the room, for how long, against what may
 * be breathed and what may burn.
 *
 * <p>Each coat lets go a share of its solvent while it flashes off and the rest in a decay; the
 * room is a well-mixed box with outdoor air and a mixing factor; the concentrations are added over
 * coats and measured as a mixture against the lower of the published limits of each solvent and
 * against its lower explosive limit.
 *
 * <p>It is an estimate for planning, within a factor of two or three at best, and no reason to be
 * without a respirator the label asks for.
 */
public final class Air {
  private Air() {}

  /**
   * The mask to have at hand for a finish before any figures are known; {@link #plan} asks for the
   * same one, for none where the air is ample, or for more where the air needs it.
   *
   * @param method how it goes on
   */
  public static Respirator usualMask(Finish finish, ApplicationMethod method) {
    Hazards hazards = finish.liquid().hazards();
    return RespiratorChoice.usual(
        hazards.isocyanate(),
        hazards.formaldehyde(),
        method == ApplicationMethod.SPRAY,
        finish.liquid().voc().high() > 0 && !finish.liquid().solvents().isEmpty());
  }

  /**
   * Plans the air for a set of coats in one room.
   *
   * <p>Refused: numbers outside the ranges of the request's records; sprayed isocyanates; solvents
   * not for a home shop; an unvented fuel heater; a flame or glow with flammable vapour; sparking
   * equipment with flammable spray, or with more than a tenth of the lower explosive limit; air
   * beyond a quarter of that limit, beyond fifty times the exposure limits, or at the level
   * immediately dangerous to life or health. Every reason is told at once, each with what to do
   * instead.
   *
   * @param request room, coats and hazards
   * @return the air over time, its peaks and averages, the flow needed, re-entry times and
   *     respirator
   */
  public static Answer<AirSchedule> plan(AirRequest request) {
    Objects.requireNonNull(request, "request");
    Checks checks = new Checks();
    AirChecks.room(request.room(), checks);
    AirChecks.releases(request, checks);
    boolean computable = checks.isValid();
    HomeRefusals.check(request, checks);
    if (!computable) {
      return Answer.refuse(checks.refusals());
    }
    AirSchedule schedule = AirPlan.of(request);
    PredictedRefusals.check(request, schedule, checks);
    if (!checks.isValid()) {
      return Answer.refuse(checks.refusals());
    }
    return Answer.of(schedule, AirWorking.of(request, schedule), AirCautions.of(request, schedule));
  }
}
