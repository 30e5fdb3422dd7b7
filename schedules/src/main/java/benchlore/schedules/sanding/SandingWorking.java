package benchlore.schedules.sanding;

import benchlore.schedules.answer.QuantityKey;
import benchlore.schedules.answer.WorkingLine;
import benchlore.schedules.quantity.Figure;
import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;
import java.util.ArrayList;
import java.util.List;

/** The working of a schedule, a line a figure. */
final class SandingWorking {
  private static final Provenance RATE_RULE =
      Provenance.fromMemory(
          "no published removal rates for hand-held sanding of wood were found; minutes may be out"
              + " by a factor of two");
  private static final Provenance FINAL_RULE =
      Provenance.commonPractice(
          "the finish's own grades; gloss shows scratches that satin hides; dense wood burnishes;"
              + " charts disagree, the label wins");
  private static final Provenance SUM = Provenance.commonPractice("a sum");

  private SandingWorking() {}

  static List<WorkingLine> of(SandingRequest request, StartDepth start, SandingSchedule schedule) {
    List<WorkingLine> lines = new ArrayList<>();
    lines.add(start.line());
    if (!start.opening().equals(Opening.ANY)) {
      lines.add(opening(start.opening()));
    }
    lines.add(finalGrade(request, start));
    lines.add(jump(request, start, schedule));
    for (SandingPass pass : schedule.passes()) {
      lines.add(pass(pass, request));
    }
    extras(lines, request, schedule.extras());
    lines.add(removed(schedule));
    lines.add(dust(request, schedule));
    return lines;
  }

  private static WorkingLine finalGrade(SandingRequest request, StartDepth start) {
    GritTarget target = Sanding.target(request, start);
    SurfaceWanted wanted = request.wanted();
    SourcedRange grades =
        start.light() ? wanted.betweenCoatGrade().orElse(wanted.finalGrade()) : wanted.finalGrade();
    return new WorkingLine(
        QuantityKey.COARSEST_LAST_GRAIN_ACCEPTED,
        Figure.computed("coarsest last grain accepted", target.coarsestMicron(), Unit.MICRON),
        "of the everyday grades in the finish's range: gloss the finest, satin the middle, matt and"
            + " oil the coarsest, but P150, under oil P180, if it goes so far; figured or soft wood"
            + " by ratio the finer half; dense close-pored wood under oil or waterborne to P220",
        List.of(
            Figure.of("coarsest P grade", grades.low(), Unit.COUNT, grades.from()),
            Figure.of("finest P grade", grades.high(), Unit.COUNT, grades.from()),
            figure("dense from", SandingFigures.DENSE_ABOVE)),
        FINAL_RULE);
  }

  private static WorkingLine opening(Opening opening) {
    SourcedRange row = opening.grades();
    return new WorkingLine(
        QuantityKey.FINEST_OPENING_GRAIN,
        Figure.computed("finest grain to open with", opening.finestMicron(), Unit.MICRON),
        "the finest P grade that such marks are begun with; deeper marks open coarser",
        List.of(
            Figure.of("coarsest usual P grade", row.low(), Unit.COUNT, row.from()),
            Figure.of("finest P grade", row.high(), Unit.COUNT, row.from())),
        row.from());
  }

  private static WorkingLine jump(
      SandingRequest request, StartDepth start, SandingSchedule schedule) {
    double before = start.grainMicron();
    double largest = 1;
    for (SandingPass pass : schedule.passes()) {
      double grain = pass.grit().micron();
      if (before != Double.POSITIVE_INFINITY) {
        largest = Math.max(largest, before / grain);
      }
      before = grain;
    }
    return new WorkingLine(
        QuantityKey.LARGEST_JUMP_IN_THE_PATH,
        Figure.computed("largest jump in the path", largest, Unit.RATIO),
        "grain before / grain after, at most the limit and never more than one everyday grade"
            + " skipped; of all such paths the one with the least hands-on time",
        List.of(
            Figure.input("jump limit", request.shop().jumpLimitRatio(), Unit.RATIO),
            Figure.of(
                "everyday grades skipped at most",
                UsualSeries.MOST_SKIPPED,
                Unit.COUNT,
                UsualSeries.FROM)),
        SandingFigures.JUMP);
  }

  static WorkingLine pass(SandingPass pass, SandingRequest request) {
    List<Figure> inputs = new ArrayList<>();
    inputs.add(Figure.input("side hardness", request.wood().hardnessNewton(), Unit.NEWTON));
    inputs.add(Figure.input("pieces", request.area().pieces(), Unit.COUNT));
    return pass(pass, request.area().totalSquareMetre(), inputs);
  }

  static WorkingLine pass(SandingPass pass, double area, List<Figure> more) {
    List<Figure> inputs = new ArrayList<>(more);
    SandingTool.Row row = pass.tool().row();
    Grit grit = pass.grit();
    inputs.add(Figure.input("area", area, Unit.SQUARE_METRE));
    inputs.add(Figure.computed("depth of the marks", pass.depthMicron(), Unit.MICRON));
    inputs.add(Figure.of("grain", grit.micron(), Unit.MICRON, grit.from()));
    inputs.add(
        Figure.of("one micrometre with P80 on 1 m2", 1e-6 / row.removal(), Unit.SECOND, RATE_RULE));
    inputs.add(
        Figure.of(
            "covering pass",
            1 / row.cover(),
            Unit.SECOND_PER_SQUARE_METRE,
            pass.tool().coverFrom()));
    inputs.add(Figure.of("disc life", row.discLife().low(), Unit.SECOND, row.discLife().from()));
    inputs.add(figure("exponent of grain", SandingFigures.GRAIN_POWER));
    inputs.add(figure("exponent of hardness", SandingFigures.HARDNESS_POWER));
    inputs.add(figure("cleaning and looking", SandingFigures.GRADE_CHANGE));
    inputs.add(figure("each further piece, a face", SandingFigures.HANDLING));
    return new WorkingLine(
        QuantityKey.PASS,
        Figure.computed(grit.label() + " with " + pass.tool().words(), pass.seconds(), Unit.SECOND),
        "seconds = area x max(covering pass, depth / rate) + cleaning + disc changes"
            + " + handling of further pieces;"
            + " rate = P80 rate x (grain / 201)^1.3 x (4400 / hardness)^0.5; film counts double",
        inputs,
        RATE_RULE);
  }

  private static void extras(
      List<WorkingLine> lines, SandingRequest request, SandingExtras extras) {
    double area = request.area().totalSquareMetre();
    if (extras.endGrain().isPresent()) {
      List<Figure> more = List.of(figure("end grain factor", SandingFigures.END_GRAIN_FACTOR));
      lines.add(pass(extras.endGrain().get(), request.area().endGrainSquareMetre(), more));
    }
    if (extras.grainRaising().isPresent()) {
      GrainRaising raising = extras.grainRaising().get();
      lines.add(
          light(
              "raising the grain",
              raising.knockOff(),
              area,
              figure("wetting", SandingExtrasPlan.WET)));
    }
    if (extras.poreFilling().isPresent()) {
      PoreFilling filling = extras.poreFilling().get();
      lines.add(
          light("filling pores", filling.level(), area, figure("packing", SandingExtrasPlan.PACK)));
    }
    if (extras.betweenCoats().isPresent()) {
      BetweenCoats between = extras.betweenCoats().get();
      Figure times = Figure.computed("times", between.times(), Unit.COUNT);
      lines.add(light("each time between coats", between.each(), area, times));
    }
  }

  private static WorkingLine light(String name, SandingPass pass, double area, Figure more) {
    return new WorkingLine(
        QuantityKey.LIGHT_PASS,
        Figure.computed(
            name + ", light pass with " + pass.grit().label(), pass.seconds(), Unit.SECOND),
        "seconds = light share x area x covering pass + cleaning + disc changes",
        List.of(
            more,
            Figure.input("area", area, Unit.SQUARE_METRE),
            figure("light share", SandingFigures.LIGHT_SHARE),
            Figure.of(
                "covering pass",
                1 / pass.tool().row().cover(),
                Unit.SECOND_PER_SQUARE_METRE,
                pass.tool().coverFrom())),
        RATE_RULE);
  }

  private static WorkingLine removed(SandingSchedule schedule) {
    List<Figure> inputs = new ArrayList<>();
    for (SandingPass pass : schedule.passes()) {
      inputs.add(Figure.computed(pass.grit().label(), pass.removedMicron(), Unit.MICRON));
    }
    return new WorkingLine(
        QuantityKey.OFF_THE_FACE,
        Figure.computed("off the face", schedule.totals().removedMicron(), Unit.MICRON),
        "sum over passes of max(depth, what one covering pass takes)",
        inputs,
        SUM);
  }

  private static WorkingLine dust(SandingRequest request, SandingSchedule schedule) {
    double density = request.wood().densityKilogramPerCubicMetre();
    return new WorkingLine(
        QuantityKey.DUST_MADE,
        Figure.computed("dust made", schedule.totals().dustKilogram(), Unit.KILOGRAM),
        "dust = area x depth removed x density, wood and film apart, extras included",
        List.of(
            Figure.input("area", request.area().totalSquareMetre(), Unit.SQUARE_METRE),
            Figure.input("density", density, Unit.KILOGRAM_PER_CUBIC_METRE),
            figure("film density", SandingFigures.FILM_DENSITY)),
        SUM);
  }

  private static Figure figure(String name, SourcedRange datum) {
    return Figure.of(name, datum.low(), datum.unit(), datum.from());
  }
}
