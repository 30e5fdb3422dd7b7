package benchlore.schedules.air;

import benchlore.schedules.answer.Caution;
import benchlore.schedules.caution.AirRows;
import benchlore.schedules.caution.CautionRow;
import benchlore.schedules.caution.ShopRows;
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
    when(request.isocyanate(), AirRows.ISOCYANATE, cautions);
    when(request.formaldehyde(), AirRows.FORMALDEHYDE, cautions);
    when(request.sprays(), AirRows.SPRAY_MIST, cautions);
    when(request.selfHeatingRags(), ShopRows.OILY_RAGS, cautions);
    boolean solvent = !request.solvents().isEmpty();
    when(anyLowBoiling(request), AirRows.LOW_BOILING_SOLVENT, cautions);
    when(solvent, AirRows.SOLVENT_CONTAINER, cautions);
    when(solvent, AirRows.NEAR_WET_FILM, cautions);
    cautions.add(AirRows.DEFER_TO_SDS.caution());
    return cautions;
  }

  private static void addPredicted(AirSchedule schedule, List<Caution> cautions) {
    double explosive = schedule.peaks().percentLowerExplosive().map(p -> p.value()).orElse(0.0);
    if (explosive >= FireRule.TENTH.percent()) {
      cautions.add(
          AirRows.OVER_TENTH_OF_EXPLOSIVE_LIMIT.caution(
              List.of(Quantity.of(explosive, Unit.PERCENT)), List.of(air(schedule))));
    }
    double index = schedule.worstIndex();
    Respirator mask = schedule.respirator().respirator();
    if (index > FlowNeeded.FINE_INDEX) {
      cautions.add(
          AirRows.OVER_EXPOSURE_LIMIT
              .with("mask", mask.advice())
              .caution(List.of(Quantity.of(index, Unit.RATIO)), List.of(air(schedule))));
    }
    if (reEntryMissing(schedule)) {
      String words = mask == Respirator.NONE ? "" : "; else throughout " + mask.advice();
      cautions.add(AirRows.RE_ENTRY_NOT_REACHED.with("mask", words).caution());
    }
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

  private static Quantity air(AirSchedule schedule) {
    return Quantity.of(schedule.flow().governing(), Unit.CUBIC_METRE_PER_SECOND);
  }

  private static void addUnknown(AirSchedule.Coverage coverage, List<Caution> cautions) {
    if (!coverage.healthComplete()) {
      String ids = list(coverage.withoutHealthLimit());
      cautions.add(AirRows.NO_EXPOSURE_LIMIT.with("solvents", ids).caution());
    }
    if (!coverage.explosiveComplete()) {
      String ids = list(coverage.withoutExplosiveLimit());
      cautions.add(AirRows.NO_EXPLOSIVE_LIMIT.with("solvents", ids).caution());
    }
  }

  private static String list(List<String> ids) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < ids.size(); i++) {
      text.append(i == 0 ? "" : ", ").append(ids.get(i).replace('-', ' '));
    }
    return text.toString();
  }

  private static void addFire(AirRequest request, List<Caution> cautions) {
    boolean flammable = Flammability.any(request);
    List<IgnitionSource> sources = request.ignitionSources();
    boolean spark =
        sources.contains(IgnitionSource.BRUSHED_MOTOR)
            || sources.contains(IgnitionSource.UNRATED_ELECTRICAL);
    when(flammable && spark, AirRows.SPARKS, cautions);
    when(flammable, AirRows.EXHAUST_FAN, cautions);
    when(flammable && sources.contains(IgnitionSource.STATIC), AirRows.STATIC, cautions);
    when(Flammability.UNKNOWN.in(request), AirRows.FLASH_POINT_UNKNOWN, cautions);
    when(Flammability.HARD_TO_LIGHT.in(request), AirRows.MIST_AND_RAGS_BURN, cautions);
  }

  private static boolean anyLowBoiling(AirRequest request) {
    for (Solvent solvent : request.solvents()) {
      if (RespiratorChoice.lowBoiling(solvent)) {
        return true;
      }
    }
    return false;
  }

  private static void when(boolean needed, CautionRow row, List<Caution> cautions) {
    if (needed) {
      cautions.add(row.caution());
    }
  }
}
