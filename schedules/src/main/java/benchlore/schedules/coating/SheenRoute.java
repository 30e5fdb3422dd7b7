package benchlore.schedules.coating;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Checks;
import benchlore.schedules.answer.Refusal;
import benchlore.schedules.material.Finish;
import benchlore.schedules.material.FinishFamily;
import benchlore.schedules.material.FinishRole;
import benchlore.schedules.material.Sheen;
import benchlore.schedules.material.SheenLevels;
import benchlore.schedules.quantity.Numeric;
import benchlore.schedules.time.Moment;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The way to a sheen: a last coat flatted by the maker over a gloss build, or the cured film
 * rubbed; from a new film or from a sheen someone no longer wants, before or after full cure.
 */
public final class SheenRoute {
  private final SheenRequest request;
  private final Finish finish;
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
   * @return the ways, least work first, with time and supplies of each; refused for figures outside
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
    checks.require(
        !request.today().isBefore(request.lastCoat()),
        "today",
        "The work would begin before the last coat is on.",
        "Give a moment after the last coat.");
    if (!checks.isValid()) {
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
      ways.add(new SheenWay(SheenWay.Kind.LEAVE, request.today(), List.of()));
    }
    if (finish.film().sheens().contains(request.wanted())) {
      ways.add(lastCoat());
    }
    if (RubFamily.of(finish).reaches(request.wanted())) {
      ways.add(rubOut());
    }
    if (ways.isEmpty()) {
      return Answer.refuse(List.of(noWay()));
    }
    ways.sort((a, b) -> Double.compare(a.seconds(), b.seconds()));
    SheenPlan plan = new SheenPlan(ways, SheenLevels.of(request.wanted()));
    SheenWorking notes = new SheenWorking(request, drying);
    return Answer.of(plan, notes.lines(ways), notes.cautions(ways));
  }

  private SheenWay lastCoat() {
    Moment opens = later(drying.moment(Stage.RECOAT_OPENS));
    Optional<Moment> closes = drying.moment(Stage.RECOAT_CLOSES);
    boolean closed = closes.isPresent() && opens.isAfter(closes.get());
    boolean scuff = finish.sandedBetweenCoats() || (finish.film().bond().hasWindow() && closed);
    boolean wrinkles = closed && finish.family() == FinishFamily.CATALYSED_LACQUER;
    Stage wait = wrinkles ? Stage.FULL_CURE : scuff ? Stage.SAND : Stage.RECOAT_OPENS;
    List<SheenStep> steps = new ArrayList<>();
    if (scuff) {
      steps.add(RubChain.sand(SheenStep.Work.SCUFF, grade(), area));
    }
    steps.add(coat());
    return new SheenWay(SheenWay.Kind.LAST_COAT, later(drying.moment(wait)), steps);
  }

  /** The finer end: the middle of two grades is mostly none. */
  private int grade() {
    return Numeric.round(finish.use().betweenCoatGrade().high());
  }

  private SheenStep coat() {
    QuantityRequest job = request.job();
    QuantityRequest one =
        new QuantityRequest(
            finish, job.area(), 1, job.wetFilmMicron(), job.method(), job.gun(), job.transfer());
    double liquid =
        LiquidQuantity.plan(one)
            .fold(
                given -> given.value().value(),
                refused -> {
                  throw new IllegalStateException("checked before");
                });
    Optional<Sheen> sheen = Optional.of(request.wanted());
    Supplies supplies = new Supplies(liquid, 0, 0);
    return new SheenStep(SheenStep.Work.COAT, 0, RubChain.seconds(area), supplies, sheen);
  }

  private SheenWay rubOut() {
    Optional<Sheen> existing = request.existing();
    boolean duller = existing.isPresent() && existing.get().compareTo(request.wanted()) > 0;
    List<SheenStep> steps =
        duller ? RubChain.down(request.wanted(), area) : RubChain.to(request.wanted(), area);
    return new SheenWay(SheenWay.Kind.RUB_OUT, later(drying.moment(Stage.FULL_CURE)), steps);
  }

  private Moment later(Optional<Moment> ready) {
    Moment today = request.today();
    return ready.isPresent() && ready.get().isAfter(today) ? ready.get() : today;
  }

  private static Refusal noWay() {
    return Refusal.of(
        "wanted",
        "No way leads this finish to that sheen: it is not sold in it and can't be rubbed to it.",
        "Choose another sheen, or a finish that is sold in it and goes over this one.");
  }
}
