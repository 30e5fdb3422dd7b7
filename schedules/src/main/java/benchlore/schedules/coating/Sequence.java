package benchlore.schedules.coating;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.Checks;
import benchlore.schedules.answer.QuantityKey;
import benchlore.schedules.answer.Refusal;
import benchlore.schedules.answer.StepId;
import benchlore.schedules.answer.WorkingLine;
import benchlore.schedules.caution.CoatingRows;
import benchlore.schedules.material.ApplicationMethod;
import benchlore.schedules.material.Finish;
import benchlore.schedules.material.Sheen;
import benchlore.schedules.quantity.Figure;
import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.quantity.Unit;
import benchlore.schedules.time.Moment;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Lays the coats of one job one after the other, each as soon as the one under it allows. */
final class Sequence {
  private final CoatingRequest request;
  private final Finish finish;
  private final List<CoatStep> steps = new ArrayList<>();
  private final List<WorkingLine> working = new ArrayList<>();
  private final List<Caution> cautions = new ArrayList<>();

  private Sequence(CoatingRequest request) {
    this.request = request;
    this.finish = request.quantity().finish();
  }

  /** Where to begin, from the request's start on. */
  static Optional<Beginning> begin(CoatingRequest request) {
    return new Sequence(request).check().isValid()
        ? CoatChain.begin(request)
        : Optional.of(Beginning.at(request.start()));
  }

  static Answer<CoatingSchedule> plan(CoatingRequest request) {
    return new Sequence(request).answer();
  }

  private Answer<CoatingSchedule> answer() {
    Checks checks = check();
    Answer<Quantity> liquid = LiquidQuantity.plan(request.quantity());
    liquid.fold(
        given -> {
          cautions.addAll(given.cautions());
          return working.addAll(given.working());
        },
        refused -> {
          refused.reasons().forEach(checks::add);
          return false;
        });
    if (!checks.isValid()) {
      return Answer.refuse(checks.refusals());
    }
    List<Refusal> refusals = coats();
    if (!refusals.isEmpty()) {
      return Answer.refuse(refusals);
    }
    return liquid.fold(
        given -> Answer.of(schedule(given.value()), working, cautions),
        refused -> Answer.refuse(refused.reasons()));
  }

  private Checks check() {
    Checks checks = new Checks();
    checks.require(
        !request.sessions().week().empty(),
        "sessions",
        "Nobody is ever in the shop.",
        "Give the hours of at least one day of the week.");
    boolean spray = request.quantity().method() == ApplicationMethod.SPRAY;
    checks.require(
        !(spray && finish.liquid().hazards().isocyanate()),
        "method",
        "Spraying this finish puts isocyanate in the air, which can cause lasting asthma; no"
            + " cartridge mask is enough.",
        "Brush or roll it, choose another finish, or have it sprayed by a shop with supplied air.");
    CoatSheen.check(checks, finish, request.sheen());
    double film = coatMicron() * request.quantity().coats();
    CoatCount.tooThick(checks, finish, Double.isFinite(film) ? film : 0);
    return checks;
  }

  private List<Refusal> coats() {
    RecoatTime next =
        new RecoatTime(
            request.start(), request.scuffedBelow() ? ScuffReason.BOND : ScuffReason.NONE);
    int coats = request.quantity().coats();
    for (int number = 1; number <= coats; number++) {
      DryingRequest coat = request.coat(next.start());
      List<Refusal> refusals = add(number, coat, next, drying(number, coat));
      if (!refusals.isEmpty() || number == coats) {
        return refusals;
      }
      DryingTimes times = steps.get(number - 1).drying();
      Optional<RecoatTime> after = after(number + 1, coat, times);
      if (after.isEmpty()) {
        return List.of(noHour(number + 1, times));
      }
      next = after.get();
    }
    return List.of();
  }

  /** The next coat: when it went on, or when it may. */
  private Optional<RecoatTime> after(int number, DryingRequest coat, DryingTimes times) {
    List<Moment> laid = request.laid().starts();
    return number <= laid.size()
        ? Optional.of(RecoatTime.laid(number, finish, times, laid.get(number - 1)))
        : RecoatTime.after(
            number,
            coat,
            times,
            request.sessions(),
            new RecoatTime.Begun(
                number == laid.size() + 1 && request.laid().scuffed(), request.laid().resume()));
  }

  private List<Refusal> add(
      int number, DryingRequest coat, RecoatTime next, Answer<DryingTimes> answer) {
    return answer.fold(
        given -> {
          boolean last = number == request.quantity().coats();
          Optional<Sheen> sheen = CoatSheen.of(finish, request.sheen(), last);
          steps.add(new CoatStep(number, coat.start(), next.scuff(), sheen, given.value()));
          for (WorkingLine line : given.working()) {
            working.add(numbered(number, line));
          }
          for (Caution caution : given.cautions()) {
            addCaution(number, caution);
          }
          if (next.scuff() == ScuffReason.WINDOW_MISSED) {
            cautions.add(
                CoatingRows.RECOAT_WINDOW_MISSED.caution().at(StepId.Task.COAT.number(number)));
          }
          return List.of();
        },
        refused -> refused.reasons());
  }

  /** How a coat dries; one that may not go on yet is refused with the ways out. */
  private Answer<DryingTimes> drying(int number, DryingRequest coat) {
    if (number <= request.laid().starts().size()) {
      return Drying.laid(coat);
    }
    Optional<PassedLimit> passed = AirGate.passed(coat);
    return passed.isPresent()
        ? Answer.refuse(List.of(AirGate.refusal(passed.get(), coat, WaysOut.of(request))))
        : Drying.plan(coat);
  }

  private double coatMicron() {
    return FilmThickness.dryMicron(finish, request.quantity().wetFilmMicron());
  }

  private CoatingSchedule schedule(Quantity liquid) {
    int coats = request.quantity().coats();
    double film = coatMicron() * coats;
    working.add(
        new WorkingLine(
            QuantityKey.DRY_FILM_OF_ALL_COATS,
            Figure.computed("dry film of all coats", film, Unit.MICRON),
            "film = coats x dry film of one coat",
            List.of(
                Figure.input("coats", coats, Unit.COUNT),
                Figure.computed("dry film of one coat", coatMicron(), Unit.MICRON)),
            Provenance.commonPractice("films add up")));
    boolean rubOut = CoatSheen.rubOut(finish, request.sheen());
    return new CoatingSchedule(steps, liquid, Quantity.of(film, Unit.MICRON), rubOut);
  }

  private static WorkingLine numbered(int number, WorkingLine line) {
    Figure figure = line.result();
    String name = "coat " + number + ": " + figure.name();
    return new WorkingLine(
        line.key(),
        new Figure(name, figure.quantity(), figure.from()),
        line.formula(),
        line.inputs(),
        line.rule());
  }

  /** The hour's cautions belong to their coat; the same words twice help nobody. */
  private void addCaution(int number, Caution caution) {
    for (Caution told : cautions) {
      if (told.code().equals(caution.code()) && told.measure().equals(caution.measure())) {
        return;
      }
    }
    cautions.add(caution.at(StepId.Task.COAT.number(number)));
  }

  /** Why a later coat finds no hour: what stands against it at the first one it would take. */
  private Refusal noHour(int number, DryingTimes before) {
    Moment ready = before.moment(Stage.RECOAT_OPENS).orElse(before.start());
    Optional<Moment> session = request.sessions().first(ready, false);
    Optional<DryingRequest> coat = session.map(request::coat);
    Optional<PassedLimit> passed = coat.flatMap(AirGate::passed);
    if (passed.isPresent()) {
      return AirGate.refusal(passed.get(), coat.get(), WaysOut.of(request));
    }
    return Refusal.of(
        "climate",
        "There is no hour within two weeks at which coat " + number + " could go on.",
        "Heat or dry the room in the shop's hours, or widen the hours.");
  }
}
