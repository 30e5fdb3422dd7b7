package benchlore.schedules.movement;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Checks;
import benchlore.schedules.answer.QuantityKey;
import benchlore.schedules.answer.WorkingLine;
import benchlore.schedules.movement.FitSchedule.Clearance;
import benchlore.schedules.movement.FitSchedule.Fixing;
import benchlore.schedules.movement.FitSchedule.Moistures;
import benchlore.schedules.movement.FitSchedule.Settling;
import benchlore.schedules.movement.FitSchedule.Travel;
import benchlore.schedules.quantity.Figure;
import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How a solid part moves through the year and what room it needs. The formulas stand at {@link
 * Moisture} and {@link Movement}; every result takes the larger movement the board's ring angles
 * allow, so gaps and slots err towards room.
 *
 * <p>The wood is taken to settle fully with each season. A film slows that and evens out short
 * swings, but over months it doesn't stop it; a thick or well-coated part stays a little inside the
 * figures.
 */
public final class Fit {
  private Fit() {}

  /**
   * Moisture, movement, time to settle and, if asked, the gap and the fixing of one part.
   *
   * @param request figures of any size; see {@link FitRequest} for the ranges accepted
   * @return the schedule with working and cautions, or every reason why not
   */
  public static Answer<FitSchedule> plan(FitRequest request) {
    Checks checks = check(request);
    if (!checks.isValid()) {
      return Answer.refuse(checks.refusals());
    }
    List<WorkingLine> working = new ArrayList<>();
    Moistures moisture = moistures(request, working);
    Travel travel = travel(request, moisture, working);
    Settling settling = SettlingRule.settling(request, moisture.shopPercent());
    working.add(SettlingRule.line(request, moisture.shopPercent(), settling));
    Optional<Clearance> clearance = clearance(request, travel, working);
    Optional<Fixing> fixing = fixing(request, travel, working);
    FitSchedule schedule = new FitSchedule(moisture, travel, settling, clearance, fixing);
    return Answer.of(schedule, working, new FitCautions(request, schedule).all());
  }

  private static Checks check(FitRequest request) {
    Checks checks = new Checks();
    request.rings().check(checks, "rings");
    checks
        .within("widthMetre", request.widthMetre(), 0.001, FitFigures.MOST_WIDTH_METRE, Unit.METRE)
        .within(
            "thicknessMetre",
            request.thicknessMetre(),
            FitFigures.LEAST_THICKNESS_METRE,
            FitFigures.MOST_THICKNESS_METRE,
            Unit.METRE)
        .within(
            "moisturePercent",
            request.moisturePercent(),
            FitFigures.LEAST_MOISTURE_PERCENT,
            FitFigures.MOST_MOISTURE_PERCENT,
            Unit.PERCENT);
    request.shop().check(checks, "shop");
    request.seasons().dry().check(checks, "seasons.dry");
    request.seasons().damp().check(checks, "seasons.damp");
    request.opening().ifPresent(opening -> opening.check(checks));
    request.panel().ifPresent(panel -> panel.check(checks, request.widthMetre()));
    return checks;
  }

  private static Moistures moistures(FitRequest request, List<WorkingLine> working) {
    Seasons seasons = request.seasons();
    working.add(
        Moisture.line(
            QuantityKey.MOISTURE_OF_THE_SHOP,
            "moisture of the shop",
            request.shop(),
            Provenance.input()));
    working.add(
        Moisture.line(
            QuantityKey.MOISTURE_IN_THE_DRY_SEASON,
            "moisture in the dry season",
            seasons.dry(),
            seasons.from()));
    working.add(
        Moisture.line(
            QuantityKey.MOISTURE_IN_THE_DAMP_SEASON,
            "moisture in the damp season",
            seasons.damp(),
            seasons.from()));
    Moistures moisture =
        new Moistures(
            request.shop().moisturePercent(), seasons.lowPercent(), seasons.highPercent());
    working.add(
        new WorkingLine(
            QuantityKey.MOISTURE_TO_FIT_AT,
            Figure.computed("moisture to fit at", moisture.middlePercent(), Unit.PERCENT),
            "the middle between the two seasons",
            List.of(
                Figure.computed("drier", moisture.dryPercent(), Unit.PERCENT),
                Figure.computed("damper", moisture.dampPercent(), Unit.PERCENT)),
            FitSources.MIDPOINT));
    return moisture;
  }

  private static Travel travel(FitRequest request, Moistures moisture, List<WorkingLine> working) {
    SourcedRange range = Movement.over(request.wood(), request.rings());
    double width = request.widthMetre();
    double now = request.moisturePercent();
    double most = range.high();
    double swell = Movement.acrossMetre(width, most, now, moisture.dampPercent());
    double shrink = -Movement.acrossMetre(width, most, now, moisture.dryPercent());
    double year = swell + shrink;
    Travel travel =
        new Travel(
            range.low(),
            most,
            Math.max(0, swell),
            Math.max(0, shrink),
            year,
            thicknessYearMetre(request, moisture));
    working.add(coefficientLine(request, range));
    working.add(
        changeLine(
            QuantityKey.SWELLING,
            Figure.computed("swelling, 0 or more", travel.swellMetre(), Unit.METRE),
            request,
            moisture.dampPercent()));
    working.add(
        changeLine(
            QuantityKey.SHRINKING,
            Figure.computed("shrinking, 0 or more", travel.shrinkMetre(), Unit.METRE),
            request,
            moisture.dryPercent()));
    working.add(thicknessLine(request, travel));
    return travel;
  }

  private static double thicknessYearMetre(FitRequest request, Moistures moisture) {
    SourcedRange range = Movement.over(request.wood(), request.rings().throughThickness());
    double thick = request.thicknessMetre();
    double now = request.moisturePercent();
    double swell = Movement.acrossMetre(thick, range.high(), now, moisture.dampPercent());
    return swell - Movement.acrossMetre(thick, range.high(), now, moisture.dryPercent());
  }

  private static WorkingLine thicknessLine(FitRequest request, Travel travel) {
    RingAngle rings = request.rings().throughThickness();
    SourcedRange range = Movement.over(request.wood(), rings);
    return new WorkingLine(
        QuantityKey.THICKNESS_THROUGH_THE_YEAR,
        Figure.computed("thickness through the year", travel.thicknessYearMetre(), Unit.METRE),
        "change = thickness x C x difference of moisture, C at 90 degrees less the ring angle",
        List.of(
            Figure.input("thickness", request.thicknessMetre(), Unit.METRE),
            Figure.computed("C through the thickness", range.high(), range.unit())),
        FitSources.MOVEMENT);
  }

  private static WorkingLine coefficientLine(FitRequest request, SourcedRange range) {
    SourcedRange t = Movement.tangential(request.wood());
    SourcedRange r = Movement.radial(request.wood());
    return new WorkingLine(
        QuantityKey.MOVEMENT_COEFFICIENT,
        Figure.computed("movement of this board", range.high(), Unit.PER_PERCENT_MOISTURE),
        "C = CT cos^2 a + CR sin^2 a, the larger over the board's ring angles",
        List.of(
            Figure.of("CT along the rings", t.high(), t.unit(), t.from()),
            Figure.of("CR across the rings", r.high(), r.unit(), r.from()),
            Figure.input("smallest ring angle", request.rings().lowDegrees(), Unit.DEGREE),
            Figure.input("largest ring angle", request.rings().highDegrees(), Unit.DEGREE)),
        FitSources.RINGS);
  }

  private static WorkingLine changeLine(
      QuantityKey key, Figure change, FitRequest request, double percent) {
    boolean straight = Movement.isStraight(request.moisturePercent(), percent);
    return new WorkingLine(
        key,
        change,
        straight
            ? "change = width x C x difference of moisture"
            : "change = width x C x difference of moisture within 6 to 14 %, and beyond"
                + " size there x difference / (1/C - 10 + moisture there)",
        List.of(
            Figure.input("width", request.widthMetre(), Unit.METRE),
            Figure.input("moisture as fitted", request.moisturePercent(), Unit.PERCENT),
            Figure.computed("moisture at the year's end point", percent, Unit.PERCENT)),
        straight ? FitSources.MOVEMENT : FitSources.BEYOND);
  }

  private static Optional<Clearance> clearance(
      FitRequest request, Travel travel, List<WorkingLine> working) {
    if (request.opening().isEmpty()) {
      return Optional.empty();
    }
    ClearancePlan plan = new ClearancePlan(request.opening().get(), travel);
    Clearance clearance = plan.clearance();
    working.addAll(plan.working(clearance));
    return Optional.of(clearance);
  }

  private static Optional<Fixing> fixing(
      FitRequest request, Travel travel, List<WorkingLine> working) {
    if (request.panel().isEmpty()) {
      return Optional.empty();
    }
    FixingPlan plan = new FixingPlan(request.panel().get(), travel, request.widthMetre());
    Fixing fixing = plan.fixing();
    working.addAll(plan.working(fixing));
    return Optional.of(fixing);
  }
}
