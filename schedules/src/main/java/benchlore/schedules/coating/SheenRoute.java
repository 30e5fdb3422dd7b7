package benchlore.schedules.coating;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.Checks;
import benchlore.schedules.answer.Datum;
import benchlore.schedules.answer.Figure;
import benchlore.schedules.answer.Line;
import benchlore.schedules.answer.Note;
import benchlore.schedules.answer.Quantity;
import benchlore.schedules.answer.Refusal;
import benchlore.schedules.answer.Unit;
import benchlore.schedules.numeric.Numeric;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The way to a sheen: a last coat flatted by the maker over a gloss build, or the cured film
 * rubbed; from a new film or from a sheen someone no longer wants, before or after full cure.
 */
public final class SheenRoute {
  private final SheenRequest request;
  private final FinishData finish;
  private final DryingTimes drying;
  private final double area;

  private SheenRoute(SheenRequest request, DryingTimes drying) {
    this.request = request;
    this.finish = request.job().finish();
    this.drying = drying;
    this.area = request.job().area().totalSquareMetre();
  }

  /**
   * Finds every way.
   *
   * @param request the film, its sheen, the sheen wanted
   * @return the ways, least work first, with time and liquid of each; refused for figures outside
   *     their ranges, for a finish without a film, and where no way leads there
   */
  public static Answer<SheenPlan> plan(SheenRequest request) {
    Checks checks = new Checks();
    LiquidQuantity.check(checks, request.job());
    checks.require(
        request.job().finish().role() == FinishRole.FILM,
        "finish",
        "This finish leaves no film, so it has no sheen to choose.",
        "Wax or buff it, or put a film finish that goes over it on top.");
    if (!checks.fine()) {
      return Answer.refuse(checks.refusals());
    }
    return Drying.plan(request.coat())
        .fold(
            given -> new SheenRoute(request, given.value()).answer(),
            refused -> Answer.refuse(refused.reasons()));
  }

  private Answer<SheenPlan> answer() {
    List<SheenWay> ways = new ArrayList<>();
    if (request.existing().isPresent() && request.existing().get() == request.wanted()) {
      ways.add(new SheenWay(SheenWay.Kind.LEAVE, request.lastCoat(), List.of()));
    }
    if (finish.sheens().contains(request.wanted())) {
      ways.add(lastCoat());
    }
    if (RubFamily.of(finish).reaches(request.wanted()) && request.wanted() != Sheen.MATT) {
      ways.add(rubOut());
    }
    if (ways.isEmpty()) {
      return Answer.refuse(List.of(noWay()));
    }
    ways.sort((a, b) -> Double.compare(a.seconds(), b.seconds()));
    SheenPlan plan = new SheenPlan(ways, SheenLevels.of(request.wanted()));
    return Answer.of(plan, lines(ways), cautions(ways));
  }

  private SheenWay lastCoat() {
    List<SheenStep> steps = new ArrayList<>();
    boolean scuff = finish.bond() != CoatBond.MELTS_IN && finish.bond() != CoatBond.ANY_TIME;
    double seconds = RubChain.PACE.high() * area;
    if (scuff) {
      int grade = Numeric.round(finish.betweenCoatGrade().mid());
      steps.add(new SheenStep(SheenStep.Work.SCUFF, grade, seconds, 0, Optional.empty()));
    }
    Optional<Sheen> sheen = Optional.of(request.wanted());
    steps.add(new SheenStep(SheenStep.Work.COAT, 0, seconds, litres(), sheen));
    LocalDateTime from = drying.moment(scuff ? Stage.SAND : Stage.RECOAT_OPENS).orElseThrow();
    boolean wrinkles = finish.family() == FinishFamily.CATALYSED_LACQUER;
    LocalDateTime cured = drying.moment(Stage.FULL_CURE).orElse(from);
    return new SheenWay(SheenWay.Kind.LAST_COAT, wrinkles ? cured : from, steps);
  }

  private double litres() {
    QuantityRequest job = request.job();
    QuantityRequest one =
        new QuantityRequest(finish, job.area(), 1, job.wetFilmMicron(), job.method(), job.gun());
    return LiquidQuantity.plan(one).fold(given -> given.value().value(), refused -> 0.0);
  }

  private SheenWay rubOut() {
    boolean duller =
        request.existing().isPresent() && request.existing().get().compareTo(request.wanted()) > 0;
    List<SheenStep> steps =
        duller ? RubChain.down(request.wanted(), area) : RubChain.to(request.wanted(), area);
    LocalDateTime from = drying.moment(Stage.FULL_CURE).orElseThrow();
    return new SheenWay(SheenWay.Kind.RUB_OUT, from, steps);
  }

  private double filmMicron() {
    return request.job().coats() * drying.dryFilmMicron();
  }

  private List<Line> lines(List<SheenWay> ways) {
    List<Line> lines = new ArrayList<>();
    Datum pace = RubChain.PACE;
    for (SheenWay way : ways) {
      lines.add(
          new Line(
              Figure.computed("work: " + words(way.kind()), way.seconds(), Unit.SECOND),
              "work = steps x area x pace",
              List.of(
                  Figure.computed("steps", way.steps().size(), Unit.COUNT),
                  Figure.computed("area", area, Unit.SQUARE_METRE),
                  Figure.of("pace", pace.high(), pace.unit(), pace.from())),
              RubChain.from()));
    }
    return lines;
  }

  private List<Caution> cautions(List<SheenWay> ways) {
    List<Caution> cautions = new ArrayList<>();
    for (SheenWay way : ways) {
      if (way.kind() == SheenWay.Kind.RUB_OUT && thin()) {
        cautions.add(rubThrough());
      }
      if (way.kind() == SheenWay.Kind.LAST_COAT && request.wanted() != Sheen.GLOSS) {
        cautions.add(stir());
      }
    }
    return cautions;
  }

  private boolean thin() {
    return filmMicron() < 2 * RubChain.TAKES.high();
  }

  private Caution rubThrough() {
    return new Caution(
        "rub-through",
        Caution.Severity.WORK,
        Note.of(
            "The whole film is {0}; rubbing takes {1} or more and goes through at edges first.",
            Quantity.of(filmMicron(), Unit.MICRON),
            Quantity.of(RubChain.TAKES.high(), Unit.MICRON)),
        Note.of("Put on another coat before rubbing, and stay off the edges until last."));
  }

  private static Caution stir() {
    return new Caution(
        "stir-flatting",
        Caution.Severity.WORK,
        Note.of("The powder that dulls a flatted finish sinks; unstirred it dries in patches."),
        Note.of("Stir from the bottom before and while you coat; use it for the last coat only."));
  }

  private Refusal noWay() {
    return Refusal.of(
        "wanted",
        "No way leads this finish to that sheen: it is not sold in it and can't be rubbed to it.",
        "Choose another sheen, or a finish that is sold in it and goes over this one.");
  }

  private static String words(SheenWay.Kind kind) {
    return switch (kind) {
      case LEAVE -> "leave it";
      case LAST_COAT -> "one more coat of the sheen wanted";
      case RUB_OUT -> "rub the cured film";
    };
  }
}
