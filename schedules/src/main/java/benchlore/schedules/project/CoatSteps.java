package benchlore.schedules.project;

import benchlore.schedules.air.Air;
import benchlore.schedules.air.AirSchedule;
import benchlore.schedules.air.Respirator;
import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.Cautions;
import benchlore.schedules.answer.Message;
import benchlore.schedules.answer.Refusal;
import benchlore.schedules.answer.StepId;
import benchlore.schedules.answer.WorkingLine;
import benchlore.schedules.coating.Beginning;
import benchlore.schedules.coating.CoatStep;
import benchlore.schedules.coating.Coating;
import benchlore.schedules.coating.CoatingSchedule;
import benchlore.schedules.coating.DryingRequest;
import benchlore.schedules.coating.DryingTimes;
import benchlore.schedules.coating.NearMiss;
import benchlore.schedules.coating.ScuffReason;
import benchlore.schedules.coating.Stage;
import benchlore.schedules.coating.StageTime;
import benchlore.schedules.material.Sheen;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.quantity.Unit;
import benchlore.schedules.time.Duration;
import benchlore.schedules.time.Interval;
import benchlore.schedules.time.Moment;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Lays the coats of one finish into the shop's hours, each with its window, its air and its
 * cautions.
 */
final class CoatSteps {
  /**
   * What the coats gave.
   *
   * @param laid the sequence
   * @param working working of the sequence
   * @param cautions cautions of the sequence, by the coat of the plan
   */
  record Coated(ProjectPlan.Laid laid, List<WorkingLine> working, List<Caution> cautions) {}

  /** What is the same for every coat: the air after it, its overspray, where the first begins. */
  private record Around(
      Optional<Answer.Given<AirSchedule>> air, Overspray overspray, Beginning begin) {}

  private final ProjectRequest request;
  private final PlanBuilder draft;
  private final double area;
  private final Duration coatTime;
  private final Duration scuffTime;
  private final CoatJob job;
  private final Layer layer;
  private final CoatJob.Place place;
  private final LayerSteps.Under under;
  private final ScuffSteps scuffs;
  private final CoatHow how;

  CoatSteps(
      ProjectRequest request, PlanBuilder draft, CoatJob.Place place, LayerSteps.Under under) {
    this.request = request;
    this.draft = draft;
    this.place = place;
    this.layer = place.layer();
    this.under = under;
    double total = 0;
    for (Part part : request.parts()) {
      total = part.coatedSquareMetre() + total;
    }
    this.area = total;
    double pace = ProjectFigures.pace(layer.coats().method()).high();
    this.coatTime =
        Duration.ofSeconds(pace * area + ProjectFigures.AROUND_A_COAT.high()).upToFiveMinutes();
    this.scuffTime = Duration.ofSeconds(ProjectFigures.SCUFF_PACE.high() * area).upToFiveMinutes();
    this.job = new CoatJob(request, place, scuffTime, coatTime);
    this.scuffs = new ScuffSteps(request.progress(), place, under, scuffTime);
    this.how =
        new CoatHow(
            layer.finish(),
            place.before() == 0 ? Optional.of(request.materials().wood()) : Optional.empty(),
            layer.coats().method());
  }

  Optional<Coated> add() {
    double session = coatTime.seconds() + scuffTime.seconds();
    Optional<Refusal> tooLong = CoatStretch.refusal(request, layer.coats(), draft.ready(), session);
    if (tooLong.isPresent()) {
      draft.refuse(List.of(tooLong.get()));
      return Optional.empty();
    }
    List<Moment> laid = job.laid();
    Moment from = request.progress().notBefore(draft.ready());
    Beginning begin =
        laid.isEmpty()
            ? Coating.begin(job.from(from)).orElse(Beginning.at(from))
            : Beginning.at(laid.get(0));
    Answer<CoatingSchedule> answer = Coating.plan(job.from(begin.start()));
    if (answer instanceof Answer.Refused<CoatingSchedule> refused) {
      draft.refuse(refused.reasons());
      return Optional.empty();
    }
    Answer.Given<CoatingSchedule> given = (Answer.Given<CoatingSchedule>) answer;
    CoatingSchedule coats = given.value();
    double one = coats.liquid().value() / coats.coats().size();
    double work = ProjectFigures.pace(layer.coats().method()).high() * area;
    Optional<Answer<AirSchedule>> air =
        CoatAir.plan(request.shop(), layer, one, work, coatTime.seconds());
    if (air.isPresent() && air.get() instanceof Answer.Refused<AirSchedule> refused) {
      draft.refuse(refused.reasons());
      return Optional.empty();
    }
    Optional<Answer.Given<AirSchedule>> breathing = air.map(a -> (Answer.Given<AirSchedule>) a);
    Overspray overspray = Overspray.of(request, layer, one, work);
    Around around = new Around(breathing, overspray, begin);
    for (int i = 0; i < coats.coats().size(); i++) {
      add(coats, i, given, around);
    }
    FinishPurchases.of(layer, coats).forEach(draft::buy);
    ProjectPlan.Laid coated =
        new ProjectPlan.Laid(
            layer.title(), place.before(), coats, breathing.map(Answer.Given::value));
    return Optional.of(new Coated(coated, named(given.working()), moved(given.cautions())));
  }

  /** Working of one finish of several, by its name. */
  private List<WorkingLine> named(List<WorkingLine> lines) {
    if (only()) {
      return lines;
    }
    List<WorkingLine> named = new ArrayList<>();
    for (WorkingLine line : lines) {
      named.add(line.named(layer.title() + ": " + line.result().name()));
    }
    return named;
  }

  /** Cautions of its coats, counted from the wood. */
  private List<Caution> moved(List<Caution> own) {
    List<Caution> moved = new ArrayList<>();
    for (Caution caution : own) {
      boolean coat = caution.step().map(step -> step.is(StepId.Task.COAT)).orElse(false);
      moved.add(
          coat ? caution.at(place.step(StepId.Task.COAT, caution.step().get().number())) : caution);
    }
    return moved;
  }

  private boolean only() {
    return request.materials().layers().size() == 1;
  }

  /** "Coat 2 of 4 (gloss)"; of one finish of several, after its name. */
  private String title(CoatStep coat, int of) {
    String sheen = coat.sheen().map(s -> " (" + SheenWords.of(s) + ")").orElse("");
    String number = " " + coat.number() + " of " + of + sheen;
    return only() ? "Coat" + number : layer.title() + ", coat" + number;
  }

  private void add(
      CoatingSchedule coats, int i, Answer.Given<CoatingSchedule> given, Around around) {
    Optional<Answer.Given<AirSchedule>> air = around.air();
    Overspray overspray = around.overspray();
    CoatStep coat = coats.coats().get(i);
    if (coat.scuff() != ScuffReason.NONE) {
      draft.add(scuffs.before(coat));
    }
    Answer<DryingTimes> drying = Coating.laid(drying(coat));
    List<WorkingLine> working = new ArrayList<>(drying.fold(d -> d.working(), r -> List.of()));
    air.ifPresent(a -> working.addAll(a.working()));
    working.addAll(overspray.working());
    working.addAll(place.before() == 0 && i == 0 ? DustDown.working(request) : List.of());
    working.addAll(CoatHow.working(coats.liquid().value() / coats.coats().size()));
    List<Caution> dries = drying.fold(d -> d.cautions(), r -> List.of());
    List<Caution> own = Cautions.merged(dries, sequence(coat.number(), given.cautions()));
    List<Caution> breathed =
        Cautions.merged(own, air.map(Answer.Given::cautions).orElse(List.of()));
    List<Message> notes = notes(coats, coat, air);
    notes.addAll(overspray.notes());
    StepId id = place.step(StepId.Task.COAT, coat.number());
    draft.add(
        new Step(
            id,
            title(coat, coats.coats().size()),
            Step.Kind.WORK,
            when(id, coat.start(), coat.start().plusSeconds(coatTime.seconds())),
            i == 0 ? first(begun(around.begin(), notes)) : offered(coats, i, notes),
            Cautions.merged(
                Cautions.merged(how.cautions(coat.number()), breathed), overspray.cautions()),
            working,
            i == 0 ? under.window() : Optional.of(window(coats.coats().get(i - 1), coat))));
    warnIfEarly(
        coat, i == 0 ? under.opens() : Optional.of(window(coats.coats().get(i - 1), coat).opens()));
    draft.readyFrom(coat.start().plusSeconds(coatTime.seconds()));
  }

  /** What the tables say of this finish here, and of what lies under it. */
  private List<Message> first(List<Message> notes) {
    List<Message> all = new ArrayList<>(under.notes());
    all.addAll(notes);
    return all;
  }

  /** With the session that this coat missed by minutes, if there is one. */
  private List<Message> offered(CoatingSchedule coats, int i, List<Message> notes) {
    List<Message> all = new ArrayList<>(notes);
    if (request.progress().slots(place.step(StepId.Task.COAT, i + 1)).isEmpty()) {
      NearMiss.of(
              job.from(coats.coats().get(0).start()),
              coats.coats().get(i - 1),
              coats.coats().get(i))
          .ifPresent(near -> all.add(near.offer()));
    }
    return all;
  }

  private void warnIfEarly(CoatStep coat, Optional<Moment> opens) {
    double early = opens.map(o -> PlanBuilder.early(coat.start(), o)).orElse(0.0);
    if (early > 0) {
      draft.warn(place.step(StepId.Task.COAT, coat.number()), TooEarly.work(early));
    }
  }

  /**
   * This coat by itself: the sequence tells the same words once for all coats, but a caution has to
   * stand at every coat it is true of.
   */
  private DryingRequest drying(CoatStep coat) {
    return new DryingRequest(
        layer.finish(), layer.coats().wetFilmMicron(), request.shop().climate(), coat.start());
  }

  /** What the sequence says of this coat; what it says of none in particular goes to the first. */
  private static List<Caution> sequence(int number, List<Caution> all) {
    StepId coat = StepId.Task.COAT.number(number);
    List<Caution> own = new ArrayList<>();
    for (Caution caution : all) {
      if (caution.step().map(coat::equals).orElse(number == 1)) {
        own.add(caution);
      }
    }
    return own;
  }

  private List<Message> notes(
      CoatingSchedule coats, CoatStep coat, Optional<Answer.Given<AirSchedule>> air) {
    List<Message> notes = new ArrayList<>();
    double litres = coats.liquid().value() / coats.coats().size();
    notes.addAll(how.lines(coat.number(), coats.coats().size(), coat.sheen(), below(coats, coat)));
    notes.add(CoatHow.amount(litres, layer.coats().wetFilmMicron()));
    boolean wood = place.before() == 0 && coat.number() == 1;
    if (wood) {
      notes.addAll(DustDown.notes(request));
      notes.addAll(BothFaces.notes(layer, request.parts()));
    }
    notes.add(dries(coat, coat.number() == coats.coats().size()));
    Respirator usual = Air.usualMask(layer.finish(), layer.coats().method());
    air.ifPresent(
        a -> notes.addAll(CoatAir.notes(a.value(), usual, coat.number() == 1, coatOne())));
    return notes;
  }

  private static Optional<Sheen> below(CoatingSchedule coats, CoatStep coat) {
    return coat.number() == 1 ? Optional.empty() : coats.coats().get(coat.number() - 2).sheen();
  }

  /** When it is dry, and when the next coat may follow: not twice where both are one time. */
  private static Message dries(CoatStep coat, boolean last) {
    Duration touch = planned(coat, Stage.TOUCH_DRY);
    Duration opens = planned(coat, Stage.RECOAT_OPENS);
    Duration next =
        opens.compareTo(planned(coat, Stage.SAND)) < 0 ? planned(coat, Stage.SAND) : opens;
    Quantity dry = Quantity.of(touch.seconds(), Unit.SECOND);
    if (last) {
      return Message.of("Touch dry after {0}.", dry);
    }
    return Message.of(
        "Touch dry after {0}; ready for the next coat after {1}.",
        dry, Quantity.of(next.seconds(), Unit.SECOND));
  }

  private static Duration planned(CoatStep coat, Stage stage) {
    return coat.drying().time(stage).map(StageTime::planned).orElse(Duration.ZERO);
  }

  private String coatOne() {
    return only() ? "coat 1" : "its first coat";
  }

  /** Why the first coat waits although it could go on. */
  private static List<Message> begun(Beginning begin, List<Message> notes) {
    if (!(begin.heldSeconds() > 0)) {
      return notes;
    }
    List<Message> all = new ArrayList<>();
    Quantity held = Quantity.of(begin.heldSeconds(), Unit.SECOND);
    all.add(
        begin.wonSeconds() > 0
            ? Message.of(
                "It could go on {0} earlier, but then coats miss their windows and the last one is"
                    + " on {1} later.",
                held, Quantity.of(begin.wonSeconds(), Unit.SECOND))
            : Message.of(
                "It could go on {0} earlier, but then coats miss their recoat windows and have to be"
                    + " scuffed all over.",
                held));
    all.addAll(notes);
    return all;
  }

  /** A coat that is scuffed because the window has closed has no deadline any more. */
  private Step.Window window(CoatStep before, CoatStep coat) {
    Moment opens = before.drying().moment(Stage.RECOAT_OPENS).orElse(before.start());
    Moment from = opens.upToQuarterHour();
    Optional<Moment> closes =
        coat.scuff() == ScuffReason.WINDOW_MISSED
            ? Optional.empty()
            : before.drying().moment(Stage.RECOAT_CLOSES);
    return new Step.Window(from, closes.map(c -> c.downToQuarterHour().orLater(from)));
  }

  /** When this step was done, or when it is planned. */
  private List<Interval> when(StepId step, Moment start, Moment end) {
    List<Interval> done = request.progress().slots(step);
    return done.isEmpty() ? List.of(new Interval(start, end)) : done;
  }
}
