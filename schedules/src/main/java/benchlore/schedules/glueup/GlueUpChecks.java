package benchlore.schedules.glueup;

import benchlore.schedules.answer.Checks;
import benchlore.schedules.answer.Refusal;
import benchlore.schedules.glueup.GlueUpRequest.Clamps;
import benchlore.schedules.glueup.GlueUpRequest.Joint;
import benchlore.schedules.glueup.GlueUpRequest.Pace;
import benchlore.schedules.material.Adhesive;
import benchlore.schedules.quantity.Unit;
import java.util.List;

/** Finds nonsense in a request: figures outside the ranges its documentation gives. */
final class GlueUpChecks {
  private static final double MOST_SPREAD = 1;
  private static final double WIDEST_GAP = 0.02;
  private static final int MOST_JOINTS = 100;

  private final Checks checks = new Checks();

  private GlueUpChecks() {}

  /** Everything wrong with the request, in the order of its components. */
  static List<Refusal> refusals(GlueUpRequest request) {
    GlueUpChecks found = new GlueUpChecks();
    found.adhesive(request.adhesive());
    found.joints(request.joints());
    found.wood(request.wood());
    boolean needed = false;
    for (Joint joint : request.joints()) {
      needed = needed || ClampRows.needed(request.adhesive(), joint);
    }
    found.clamps(request.clamps(), needed);
    found.pace(request.pace());
    int year = request.start().date().year();
    found.checks.require(
        year >= 1900 && year <= 2999, "start", "The start is out of range.", "Give a real date.");
    return found.checks.refusals();
  }

  /** A filler may say more of itself than a glue line is reckoned with. */
  private void adhesive(Adhesive adhesive) {
    Adhesive.table().check(checks, "adhesive", adhesive);
    Adhesive.Speed speed = adhesive.air().speed();
    int rules = speed.rateQ10().isPresent() ? 1 : 0;
    rules = speed.rateActivationEnergy().isPresent() ? rules + 1 : rules;
    rules = speed.rateDatum().isPresent() ? rules + 1 : rules;
    checks.require(
        rules <= 1,
        "adhesive",
        "It is said in more than one way how much warmth hurries this adhesive.",
        "Keep one: the factor for ten degrees, the activation energy, or where it stops.");
    if (checks.isValid()) {
      Adhesive.Line line = adhesive.line();
      if (line.spread().high() > MOST_SPREAD) {
        checks.add(filler("adhesive.spread"));
      } else if (line.maximumGap().high() > WIDEST_GAP) {
        checks.add(filler("adhesive.maximum-gap"));
      }
    }
  }

  private static Refusal filler(String input) {
    return Refusal.of(
        input,
        "This is a filler: it is pressed into a place and shaped, not spread as a glue line, so"
            + " there is no open time and no row of clamps to plan.",
        "Follow its page by hand, on wood wetted first with liquid epoxy; for a glue line take a"
            + " liquid epoxy.");
  }

  private void joints(List<Joint> joints) {
    int total = 0;
    for (Joint joint : joints) {
      checks.within("lengthMetre", joint.lengthMetre(), 0.005, 10, Unit.METRE);
      checks.within("widthMetre", joint.widthMetre(), 0.001, 2, Unit.METRE);
      checks.within("count", joint.count(), 1, MOST_JOINTS, Unit.COUNT);
      checks.within("backingMetre", joint.backingMetre(), 0.001, 2, Unit.METRE);
      checks.within("gapMetre", joint.gapMetre(), 0, WIDEST_GAP, Unit.METRE);
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
    checks
        .within("clamps.count", clamps.count(), 0, 500, Unit.COUNT)
        .require(
            clamps.count() != 0 || !needed,
            "clamps.count",
            "There are no clamps.",
            "Borrow some; only short edges can be rubbed together with hot hide glue.");
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
}
