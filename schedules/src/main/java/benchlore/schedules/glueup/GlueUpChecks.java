package benchlore.schedules.glueup;

import benchlore.schedules.answer.Checks;
import benchlore.schedules.answer.Refusal;
import benchlore.schedules.glueup.GlueUpRequest.Clamps;
import benchlore.schedules.glueup.GlueUpRequest.Joint;
import benchlore.schedules.glueup.GlueUpRequest.Pace;
import benchlore.schedules.material.Adhesive;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;
import java.util.List;
import java.util.Optional;

/** Finds nonsense in a request: figures outside the ranges its documentation gives. */
final class GlueUpChecks {
  private static final double WEEK = 7 * 86_400.0;
  private static final int MOST_JOINTS = 100;

  private final Checks checks = new Checks();

  private GlueUpChecks() {}

  /** Everything wrong with the request, in the order of its components. */
  static List<Refusal> refusals(GlueUpRequest request) {
    GlueUpChecks found = new GlueUpChecks();
    found.adhesive(request.adhesive());
    found.adhesiveMatter(request.adhesive());
    found.joints(request.joints());
    found.wood(request.wood());
    found.clamps(request.clamps(), ClampRows.needed(request.adhesive()));
    found.pace(request.pace());
    int year = request.start().date().year();
    found.checks.require(
        year >= 1900 && year <= 2999, "start", "The start is out of range.", "Give a real date.");
    return found.checks.refusals();
  }

  private void adhesive(Adhesive adhesive) {
    datum("openTime", adhesive.openTime(), 1, WEEK, Unit.SECOND);
    optional("closedTime", adhesive.closedTime(), 1, WEEK, Unit.SECOND);
    datum("clampTime", adhesive.clampTime(), 0, WEEK, Unit.SECOND);
    datum("handleAfter", adhesive.handleAfter(), 0, 4 * WEEK, Unit.SECOND);
    datum("fullStrength", adhesive.fullStrength(), 0, 10 * WEEK, Unit.SECOND);
    optional("machineAfter", adhesive.machineAfter(), 0, 10 * WEEK, Unit.SECOND);
    optional("potLife", adhesive.potLife(), 1, WEEK, Unit.SECOND);
    datum("referenceCelsius", adhesive.referenceCelsius(), 0, 80, Unit.CELSIUS);
    datum("minimumCelsius", adhesive.minimumCelsius(), -20, 80, Unit.CELSIUS);
    optional("maximumCelsius", adhesive.maximumCelsius(), 0, 120, Unit.CELSIUS);
  }

  private void adhesiveMatter(Adhesive adhesive) {
    datum("spread", adhesive.spread(), 0.02, 1, Unit.KILOGRAM_PER_SQUARE_METRE);
    datum("density", adhesive.density(), 600, 2200, Unit.KILOGRAM_PER_CUBIC_METRE);
    datum("pressureSoftwood", adhesive.pressureSoftwood(), 0, 3e6, Unit.PASCAL);
    datum("pressureMedium", adhesive.pressureMedium(), 0, 3e6, Unit.PASCAL);
    datum("pressureHardwood", adhesive.pressureHardwood(), 0, 3e6, Unit.PASCAL);
    datum("maximumGapMetre", adhesive.maximumGapMetre(), 0, 0.02, Unit.METRE);
    optional("rateQ10", adhesive.rateQ10(), 1, 4, Unit.RATIO);
  }

  private void joints(List<Joint> joints) {
    int total = 0;
    for (Joint joint : joints) {
      checks.within("lengthMetre", joint.lengthMetre(), 0.005, 10, Unit.METRE);
      checks.within("widthMetre", joint.widthMetre(), 0.001, 2, Unit.METRE);
      checks.within("count", joint.count(), 1, MOST_JOINTS, Unit.COUNT);
      checks.within("backingMetre", joint.backingMetre(), 0.001, 2, Unit.METRE);
      checks.within("gapMetre", joint.gapMetre(), 0, 0.02, Unit.METRE);
      // A note's pattern marks its quantities with braces.
      checks.require(
          joint.name().indexOf('{') < 0 && joint.name().indexOf('}') < 0,
          "name",
          "A joint's name has braces in it.",
          "Use letters and figures.");
      total = Math.min(MOST_JOINTS + 1, Math.max(0, joint.count())) + total;
      total = Math.min(MOST_JOINTS + 1, total);
    }
    checks.require(
        total >= 1 && total <= MOST_JOINTS,
        "joints",
        "There must be from 1 to 100 joints in all.",
        "Name the joints; plan a larger job in parts.");
  }

  private void wood(GlueUpRequest.Wood wood) {
    checks.within(
        "densityKilogramPerCubicMetre",
        wood.densityKilogramPerCubicMetre(),
        80,
        1400,
        Unit.KILOGRAM_PER_CUBIC_METRE);
    checks.within("sinceMachinedSecond", wood.sinceMachinedSecond(), 0, 3.2e8, Unit.SECOND);
    checks.require(
        !wood.moisturePercents().isEmpty(),
        "moisturePercents",
        "No moisture reading is given.",
        "Take a meter reading of each part.");
    for (double percent : wood.moisturePercents()) {
      checks.within("moisturePercents", percent, 0, 200, Unit.PERCENT);
    }
  }

  private void clamps(Clamps clamps, boolean needed) {
    checks.within("clamps.count", clamps.count(), needed ? 1 : 0, 500, Unit.COUNT);
    if (!needed) {
      return;
    }
    checks.within("forceNewton", clamps.forceNewton(), 50, 50_000, Unit.NEWTON);
    checks.within("caulDepthMetre", clamps.caulDepthMetre(), 0, 0.5, Unit.METRE);
    checks.within("headMetre", clamps.headMetre(), 0, 0.3, Unit.METRE);
  }

  private void pace(Pace pace) {
    checks.within("perJointSecond", pace.perJointSecond(), 1, 3600, Unit.SECOND);
    checks.within(
        "perSquareMetreSecond",
        pace.perSquareMetreSecond(),
        0,
        36_000,
        Unit.SECOND_PER_SQUARE_METRE);
    checks.within("perClampSecond", pace.perClampSecond(), 1, 3600, Unit.SECOND);
    checks.within("people", pace.people(), 1, 8, Unit.COUNT);
  }

  private void optional(
      String name, Optional<SourcedRange> datum, double low, double high, Unit unit) {
    datum.ifPresent(present -> datum(name, present, low, high, unit));
  }

  private void datum(String name, SourcedRange datum, double low, double high, Unit unit) {
    String input = "adhesive." + name;
    if (datum.unit() != unit) {
      checks.require(false, input, "The figure is in the wrong unit.", "Give it in " + unit + ".");
      return;
    }
    checks.within(input, datum.low(), low, high, unit);
    if (datum.high() != datum.low()) {
      checks.within(input, datum.high(), low, high, unit);
    }
  }
}
