package benchlore.schedules.sanding;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.Checks;
import benchlore.schedules.answer.Message;
import benchlore.schedules.answer.QuantityKey;
import benchlore.schedules.answer.Refusal;
import benchlore.schedules.answer.WorkingLine;
import benchlore.schedules.caution.SandingRows;
import benchlore.schedules.quantity.Figure;
import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Rubs a cured film out to a sheen: level with paper, refine by the cheapest path over the shelf,
 * then pad, compound or polish.
 *
 * <pre>
 * film off = sum over papers of max(marks, one covering pass) + rubbing;  film left = film - film off
 * </pre>
 *
 * <p>The same model as {@link Sanding}, with the scratch of a hard film. Only film finishes can be
 * rubbed out; hard, brittle and melted-together ones (shellac, lacquer, two-part) take it best.
 * Chains are general finishing practice, from memory; times may be out by a factor of two.
 */
public final class RubOut {
  /** Coarsest grain used on a film: P320. */
  private static final double COARSEST_MICRON = 46;

  private static final SourcedRange LEAST_FILM =
      SourcedRange.of(25, Unit.MICRON, Provenance.fromMemory("a thinner film wears through soon"));

  private static final Provenance RULE =
      Provenance.fromMemory("rub-out chains and film removal of general finishing practice");

  private static final Figure FILM_HARDNESS =
      Figure.of(
          "hardness the film is taken as",
          SandingFigures.REFERENCE_HARDNESS.low(),
          Unit.NEWTON,
          Provenance.fromMemory("clean or wet paper cuts cured film about like cherry"));

  private RubOut() {}

  /**
   * The cheapest rub-out in hands-on time.
   *
   * @param request the question; refused outside the ranges of its record, if the last paper can't
   *     be reached from the shelf, or if less than 25 micrometres of film would be left
   * @return the steps with working and cautions
   */
  public static Answer<RubOutSchedule> plan(RubOutRequest request) {
    Objects.requireNonNull(request, "request");
    Checks checks = new Checks();
    SandingChecks.shop(checks, request.shop());
    checks.within("filmMicron", request.filmMicron(), 5, 2000, Unit.MICRON);
    checks.within("levelMicron", request.levelMicron(), 1, 500, Unit.MICRON);
    checks.within("areaSquareMetre", request.areaSquareMetre(), 0.0001, 1000, Unit.SQUARE_METRE);
    if (!checks.isValid()) {
      return Answer.refuse(checks.refusals());
    }
    Optional<List<SandingPass>> papers = papers(request);
    if (papers.isEmpty()) {
      return Answer.refuse(List.of(noWay(request)));
    }
    RubOutSchedule schedule = schedule(request, papers.get());
    if (schedule.leftMicron() < LEAST_FILM.low()) {
      return Answer.refuse(List.of(tooThin(request, schedule)));
    }
    return Answer.of(schedule, working(request, schedule), cautions(request, schedule));
  }

  private static Optional<List<SandingPass>> papers(RubOutRequest request) {
    SandingShop shop = request.shop();
    List<Grit> fine = new ArrayList<>();
    for (Grit grit : shop.shelf()) {
      if (grit.micron() <= COARSEST_MICRON) {
        fine.add(grit);
      }
    }
    SandingShop papers = new SandingShop(fine, shop.tools(), shop.jumpLimitRatio());
    SandedStock film = SandedStock.film(request.areaSquareMetre());
    return GritPath.cheapest(film, papers, start(request), target(request));
  }

  private static GritTarget target(RubOutRequest request) {
    return GritTarget.of(SheenRub.of(request.sheen()).lastPaper());
  }

  private static StartDepth start(RubOutRequest request) {
    double depth = request.levelMicron();
    WorkingLine line =
        new WorkingLine(
            QuantityKey.DEPTH_TO_LEVEL,
            Figure.computed("depth to level", depth, Unit.MICRON),
            "depth = nibs, brush marks or orange peel",
            List.of(Figure.input("depth to level", depth, Unit.MICRON)),
            RULE);
    return StartDepth.cut(depth, Opening.ANY, line);
  }

  private static RubOutSchedule schedule(RubOutRequest request, List<SandingPass> papers) {
    double seconds = Sanding.seconds(papers);
    double removed = 0;
    for (SandingPass pass : papers) {
      removed = removed + pass.removedMicron();
    }
    for (RubKind kind : SheenRub.of(request.sheen()).rubbing()) {
      seconds = kind.secondsPerSquareMetre() * request.areaSquareMetre() + seconds;
      removed = removed + kind.removedMicron();
    }
    double left = request.filmMicron() - removed;
    return new RubOutSchedule(
        papers, SheenRub.of(request.sheen()).rubbing(), seconds, removed, left);
  }

  private static Refusal noWay(RubOutRequest request) {
    SourcedRange last = SheenRub.of(request.sheen()).lastPaper();
    return new Refusal(
        "shelf",
        Message.of("The last paper for this sheen can't be reached from the shelf in small steps."),
        Message.of(
            "Have papers from P320 or P400 up to P{0} to P{1} with no large gap between.",
            Quantity.of(last.low(), Unit.COUNT), Quantity.of(last.high(), Unit.COUNT)));
  }

  private static Refusal tooThin(RubOutRequest request, RubOutSchedule schedule) {
    return new Refusal(
        "filmMicron",
        Message.of(
            "Rubbing out takes about {0} of a film of {1}: it would cut through at edges.",
            Quantity.of(schedule.removedMicron(), Unit.MICRON),
            Quantity.of(request.filmMicron(), Unit.MICRON)),
        Message.of("Add a coat or two and let the film cure, or choose a duller sheen."));
  }

  private static List<WorkingLine> working(RubOutRequest request, RubOutSchedule schedule) {
    List<WorkingLine> lines = new ArrayList<>();
    lines.add(start(request).line());
    for (SandingPass pass : schedule.papers()) {
      lines.add(SandingWorking.pass(pass, request.areaSquareMetre(), List.of(FILM_HARDNESS)));
    }
    for (RubKind kind : schedule.rubbing()) {
      double pace = kind.secondsPerSquareMetre();
      lines.add(
          new WorkingLine(
              QuantityKey.RUBBING,
              Figure.computed(kind.words(), request.areaSquareMetre() * pace, Unit.SECOND),
              "seconds = area x pace",
              List.of(Figure.of("pace", pace, Unit.SECOND_PER_SQUARE_METRE, RULE)),
              RULE));
    }
    lines.add(
        new WorkingLine(
            QuantityKey.FILM_LEFT,
            Figure.computed("film left", schedule.leftMicron(), Unit.MICRON),
            "film left = film - sum of what each step takes",
            List.of(
                Figure.input("film", request.filmMicron(), Unit.MICRON),
                Figure.computed("taken off", schedule.removedMicron(), Unit.MICRON),
                Figure.of("least film", LEAST_FILM.low(), Unit.MICRON, LEAST_FILM.from())),
            RULE));
    return lines;
  }

  private static List<Caution> cautions(RubOutRequest request, RubOutSchedule schedule) {
    List<Caution> cautions = new ArrayList<>();
    cautions.add(SandingRows.CURE_BEFORE_RUBBING.caution());
    if (powered(request.shop())) {
      cautions.add(SandingRows.MAINS_AND_WATER.caution());
    }
    cautions.add(SandingRows.NO_STEEL_WOOL_ON_WATERBORNE.caution());
    if (schedule.leftMicron() < request.filmMicron() / 2) {
      cautions.add(SandingRows.HALF_THE_FILM_GOES.caution());
    }
    return cautions;
  }

  private static boolean powered(SandingShop shop) {
    return shop.tools().contains(SandingTool.RANDOM_ORBIT)
        || shop.tools().contains(SandingTool.BELT);
  }
}
