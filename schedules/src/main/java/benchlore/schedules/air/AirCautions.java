package benchlore.schedules.air;

import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.Caution.Severity;
import benchlore.schedules.answer.Message;
import benchlore.schedules.material.Solvent;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.quantity.Unit;
import java.util.ArrayList;
import java.util.List;

/** Which cautions go with a schedule. */
final class AirCautions {
  private AirCautions() {}

  static List<Caution> of(AirRequest request, AirSchedule schedule) {
    List<Caution> cautions = new ArrayList<>();
    addPredicted(schedule, cautions);
    addUnknown(schedule.coverage(), cautions);
    addFire(request, cautions);
    when(request.isocyanate(), Warning.ISOCYANATE, cautions);
    when(request.sprays(), Warning.SPRAY_MIST, cautions);
    when(request.selfHeatingRags(), Warning.OILY_RAGS, cautions);
    boolean solvent = !request.solvents().isEmpty();
    when(anyLowBoiling(request), Warning.LOW_BOILING, cautions);
    when(solvent, Warning.SOLVENT_CONTAINER, cautions);
    when(solvent, Warning.NEAR_WET_FILM, cautions);
    cautions.add(Warning.DEFER_TO_SDS.caution());
    return cautions;
  }

  private static void addPredicted(AirSchedule schedule, List<Caution> cautions) {
    double explosive = schedule.peaks().percentLowerExplosive().map(p -> p.value()).orElse(0.0);
    if (explosive >= FireRule.TENTH.percent()) {
      Message what =
          Message.of(
              "The room's air reaches {0} of the lower explosive limit; above a tenth it counts as"
                  + " hazardous to be in.",
              Quantity.of(explosive, Unit.PERCENT));
      String code = "over-tenth-of-explosive-limit";
      Message measure =
          Message.of(
              "Give {0} of outdoor air, or coat less at a time, and stay out until the film is dry;"
                  + " a mask is no help against fire.",
              Quantity.of(schedule.flow().governing(), Unit.CUBIC_METRE_PER_SECOND));
      cautions.add(new Caution(code, Severity.DANGER, what, measure));
    }
    double index = schedule.peaks().index().map(p -> p.value()).orElse(0.0);
    if (index > FlowNeeded.FINE_INDEX) {
      Message what =
          Message.of(
              "At its highest the room's air holds {0} times the exposure limits.",
              Quantity.of(index, Unit.RATIO));
      cautions.add(new Caution("over-exposure-limit", Severity.HEALTH, what, moreAir(schedule)));
    }
    if (reEntryMissing(schedule)) {
      cautions.add(notReached(schedule.respirator().respirator()));
    }
  }

  private static Caution notReached(Respirator respirator) {
    return new Caution(
        "re-entry-not-reached",
        Severity.HEALTH,
        Message.of("The air is not fine again before the next coat, or not within sixty days."),
        Message.of(
            respirator == Respirator.NONE
                ? "Wait longer between coats, or give more outdoor air."
                : "Wait longer between coats, give more outdoor air, or throughout "
                    + respirator.advice()
                    + "."));
  }

  private static boolean reEntryMissing(AirSchedule schedule) {
    boolean healthKnown = schedule.peaks().index().isPresent();
    boolean fireKnown = schedule.peaks().percentLowerExplosive().isPresent();
    for (AirSchedule.ReEntry reEntry : schedule.reEntries()) {
      if ((healthKnown && reEntry.healthSecond().isEmpty())
          || (fireKnown && reEntry.fireSecond().isEmpty())) {
        return true;
      }
    }
    return false;
  }

  private static Message moreAir(AirSchedule schedule) {
    return Message.of(
        "Give {0} of outdoor air, or coat less at a time; else "
            + schedule.respirator().respirator().advice()
            + " while you work, and stay out until the film is dry.",
        Quantity.of(schedule.flow().governing(), Unit.CUBIC_METRE_PER_SECOND));
  }

  private static void addUnknown(AirSchedule.Coverage coverage, List<Caution> cautions) {
    if (!coverage.healthComplete()) {
      cautions.add(
          new Caution(
              "no-exposure-limit",
              Severity.HEALTH,
              Message.of(
                  "No exposure limit is published for "
                      + list(coverage.withoutHealthLimit())
                      + "; the index leaves it out, and so does any time to come back."),
              Message.of(
                  "Ask the maker, keep air moving until no smell is left, and take no comfort from"
                      + " a low index.")));
    }
    if (!coverage.explosiveComplete()) {
      cautions.add(
          new Caution(
              "no-explosive-limit",
              Severity.DANGER,
              Message.of(
                  "No lower explosive limit is on record for "
                      + list(coverage.withoutExplosiveLimit())
                      + "; the fire figures leave it out."),
              Message.of("Look in the safety data sheet, and keep every flame and spark away.")));
    }
  }

  private static String list(List<String> ids) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < ids.size(); i++) {
      text.append(i == 0 ? "" : ", ").append(ids.get(i));
    }
    return text.toString();
  }

  private static void addFire(AirRequest request, List<Caution> cautions) {
    boolean flammable = Flammability.any(request);
    List<IgnitionSource> sources = request.ignitionSources();
    boolean spark =
        sources.contains(IgnitionSource.BRUSHED_MOTOR)
            || sources.contains(IgnitionSource.UNRATED_ELECTRICAL);
    when(flammable && spark, Warning.SPARKS, cautions);
    when(flammable, Warning.EXHAUST_FAN, cautions);
    when(flammable && sources.contains(IgnitionSource.STATIC), Warning.STATIC, cautions);
    when(Flammability.UNKNOWN.in(request), Warning.FLASH_UNKNOWN, cautions);
    when(Flammability.HARD_TO_LIGHT.in(request), Warning.HARD_TO_LIGHT, cautions);
  }

  private static boolean anyLowBoiling(AirRequest request) {
    for (Solvent solvent : request.solvents()) {
      if (RespiratorChoice.lowBoiling(solvent)) {
        return true;
      }
    }
    return false;
  }

  private static void when(boolean needed, Warning warning, List<Caution> cautions) {
    if (needed) {
      cautions.add(warning.caution());
    }
  }
}
