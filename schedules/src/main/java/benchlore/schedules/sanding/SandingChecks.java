package benchlore.schedules.sanding;

import benchlore.schedules.answer.Checks;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;

/** Tells everything that is wrong with a request at once. */
final class SandingChecks {
  private SandingChecks() {}

  static Checks of(SandingRequest request) {
    Checks checks = new Checks();
    request.start().check(checks);
    butStart(checks, request);
    return checks;
  }

  /** All of it but the start surface. */
  static void butStart(Checks checks, SandingRequest request) {
    wood(checks, request.wood());
    area(checks, request.area());
    wanted(checks, request.wanted());
    shop(checks, request.shop());
  }

  static void shop(Checks checks, SandingShop shop) {
    checks.require(
        !shop.shelf().isEmpty(),
        "shelf",
        "There is no abrasive on the shelf.",
        "Add the grades you have; P80, P120, P180 and P220 are a good start.");
    checks.require(
        hasFinishing(shop),
        "tools",
        "No tool here can make the last pass.",
        "Add a block, a random-orbit sander or paper by hand; a belt sander never goes last.");
    checks.within("jumpLimitRatio", shop.jumpLimitRatio(), 1.15, 3, Unit.RATIO);
  }

  private static boolean hasFinishing(SandingShop shop) {
    for (SandingTool tool : shop.tools()) {
      if (tool.finishes()) {
        return true;
      }
    }
    return false;
  }

  static void wood(Checks checks, SandingWood wood) {
    checks.within("hardnessNewton", wood.hardnessNewton(), 200, 25_000, Unit.NEWTON);
    checks.within(
        "densityKilogramPerCubicMetre",
        wood.densityKilogramPerCubicMetre(),
        80,
        1400,
        Unit.KILOGRAM_PER_CUBIC_METRE);
  }

  private static void area(Checks checks, SandingArea area) {
    double total = area.totalSquareMetre();
    double most = total >= 0.0001 && total <= 1000 ? total : 1000;
    checks.within("totalSquareMetre", total, 0.0001, 1000, Unit.SQUARE_METRE);
    checks.within("endGrainSquareMetre", area.endGrainSquareMetre(), 0, most, Unit.SQUARE_METRE);
    checks.within("pieces", area.pieces(), 1, 10_000, Unit.COUNT);
  }

  private static void wanted(Checks checks, SurfaceWanted wanted) {
    grades(checks, "finalGrade", wanted.finalGrade());
    if (wanted.betweenCoatGrade().isPresent()) {
      grades(checks, "betweenCoatGrade", wanted.betweenCoatGrade().get());
    }
    checks.within("coats", wanted.coats(), 0, 50, Unit.COUNT);
  }

  private static void grades(Checks checks, String input, SourcedRange grades) {
    checks.within(input, grades.low(), 12, 2500, Unit.COUNT);
    checks.within(input, grades.high(), 12, 2500, Unit.COUNT);
  }
}
