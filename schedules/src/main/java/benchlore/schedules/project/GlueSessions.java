package benchlore.schedules.project;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Refusal;
import benchlore.schedules.answer.StepId;
import benchlore.schedules.glueup.GlueUp;
import benchlore.schedules.glueup.GlueUpRequest;
import benchlore.schedules.glueup.GlueUpSchedule;
import benchlore.schedules.material.Species;
import benchlore.schedules.time.Interval;
import benchlore.schedules.time.Moment;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds and books the hour for each glue-up: the first at which the adhesive sets, the clamps are
 * free and the hands have time. A blank that can't be closed in one go is glued in stages.
 */
final class GlueSessions {
  /**
   * Clamps in use.
   *
   * @param until when they are off
   * @param count how many
   */
  private record Busy(Moment until, int count) {}

  /**
   * A blank, or what is left of it, to be glued in one session.
   *
   * @param name what it is called
   * @param joints not glued yet
   * @param stage which session of it, from 1
   * @param before seconds of the session before the glue
   */
  private record Blank(String name, int joints, int stage, double before) {}

  private final ProjectRequest request;
  private final PlanBuilder draft;
  private final Jointing jointing;
  private final List<Busy> busy = new ArrayList<>();
  private final List<Interval> glued;
  private final List<Interval> unclamped;
  private Moment machine;
  private double cubicMetre;

  GlueSessions(ProjectRequest request, PlanBuilder draft) {
    this.request = request;
    this.draft = draft;
    this.jointing = new Jointing(request);
    this.machine = draft.ready();
    this.glued = new ArrayList<>(request.progress().run(StepId.Task.GLUE));
    this.unclamped = new ArrayList<>(request.progress().run(StepId.Task.CLAMPS_OFF));
  }

  /** From when every joint may be machined. */
  Moment machineFrom() {
    return machine;
  }

  /** Adhesive of all sessions so far. */
  double cubicMetre() {
    return cubicMetre;
  }

  /** Books every blank of a part; notes a refusal in the draft where one can't be. */
  List<GlueSession> of(Part part) {
    List<GlueSession> sessions = new ArrayList<>();
    for (int n = 1; n <= part.count(); n++) {
      String name = part.count() == 1 ? part.name() : part.name() + " " + n;
      int joints = part.boards() - 1;
      int stage = 1;
      while (joints > 0) {
        Optional<GlueSession> session = next(part, name, joints, stage);
        if (session.isEmpty()) {
          return sessions;
        }
        sessions.add(session.get());
        joints = session.get().jointsLeft();
        stage++;
      }
    }
    return sessions;
  }

  private Optional<GlueSession> next(Part part, String name, int joints, int stage) {
    double before = stage == 1 ? jointing.inSessionSecond(part) : 0;
    if (!glued.isEmpty()) {
      return asDone(part, new Blank(name, joints, stage, before));
    }
    return booked(part, new Blank(name, joints, stage, before));
  }

  private Optional<GlueSession> booked(Part part, Blank blank) {
    Moment from = draft.ready();
    Moment latest = from.plusDays(ProjectFigures.GLUE_DAYS);
    List<Refusal> reasons = List.of();
    while (from.isBefore(latest)) {
      Optional<Interval> slot =
          draft.unbroken(
              "a glue-up", from, blank.before() + ProjectFigures.AROUND_A_GLUE_UP.high());
      if (slot.isEmpty()) {
        return Optional.empty();
      }
      Moment start = slot.get().start();
      Answer<GlueUpSchedule> answer =
          GlueUp.plan(question(part, blank, start, freeClamps(start.plusSeconds(blank.before()))));
      if (answer instanceof Answer.Given<GlueUpSchedule> given) {
        Optional<Interval> work = work(given.value(), start, blank);
        if (work.isPresent()) {
          return book(blank, work.get(), given);
        }
        reasons = tooLong(blank.name());
      } else {
        reasons = ((Answer.Refused<GlueUpSchedule>) answer).reasons();
      }
      from = start.plusHours(1);
    }
    draft.refuse(reasons);
    return Optional.empty();
  }

  /**
   * The session at the time it was done at, whatever the shop's hours say; there were clamps
   * enough, or it would not be done.
   */
  private Optional<GlueSession> asDone(Part part, Blank blank) {
    Interval work = glued.remove(0);
    Answer<GlueUpSchedule> answer =
        GlueUp.plan(question(part, blank, work.start(), request.shop().clamps().count()));
    if (answer instanceof Answer.Given<GlueUpSchedule> given) {
      return book(blank, work, given);
    }
    draft.refuse(((Answer.Refused<GlueUpSchedule>) answer).reasons());
    return Optional.empty();
  }

  /** When the clamps come off: when they did, or the first free moment after the clamp time. */
  private Optional<Interval> off(GlueUpSchedule.Batch batch) {
    return unclamped.isEmpty()
        ? draft.unbroken("taking clamps off", batch.clampsOff(), ProjectFigures.UNCLAMP.high())
        : Optional.of(unclamped.remove(0));
  }

  /** The stretch from this start on, if it is free as long as the work takes. */
  private Optional<Interval> work(GlueUpSchedule schedule, Moment start, Blank blank) {
    GlueUpSchedule.Batch first = schedule.batches().get(0);
    double seconds = first.spreadSecond() + first.closeSecond() + blank.before();
    Optional<Interval> slot =
        draft.unbroken("a glue-up", start, seconds + ProjectFigures.AROUND_A_GLUE_UP.high());
    return slot.filter(found -> found.start().equals(start));
  }

  private Optional<GlueSession> book(
      Blank blank, Interval work, Answer.Given<GlueUpSchedule> given) {
    draft.take(work);
    draft.readyFrom(work.end());
    GlueUpSchedule.Batch batch = given.value().batches().get(0);
    Optional<Interval> off = off(batch);
    if (off.isEmpty()) {
      return Optional.empty();
    }
    draft.take(off.get());
    busy.add(new Busy(off.get().end(), batch.clamps()));
    double density = request.materials().adhesive().line().density().mid();
    cubicMetre = batch.massKilogram() / density + cubicMetre;
    machine = machine.orLater(settled(given.value()).orLater(off.get().end()));
    boolean whole = given.value().batches().size() == 1 && blank.stage() == 1;
    String label = whole ? blank.name() : blank.name() + ", stage " + blank.stage();
    return Optional.of(new GlueSession(label, work, off.get(), given, blank.before()));
  }

  private Moment settled(GlueUpSchedule schedule) {
    return JointSettling.of(request).machineFrom(request, schedule);
  }

  /** The glue-up of a session that begins at this moment. */
  private GlueUpRequest question(Part part, Blank blank, Moment start, int clamps) {
    Species wood = request.materials().wood();
    double percent = StockSteps.workedPercent(request);
    double moist = 1 + percent / 100;
    double density = wood.specificGravity().low() * 1000 * moist;
    GlueUpRequest.Clamps shop = request.shop().clamps();
    return new GlueUpRequest(
        request.materials().adhesive(),
        List.of(
            new GlueUpRequest.Joint(
                blank.name(),
                part.lengthMetre(),
                part.thicknessMetre(),
                blank.joints(),
                GlueUpRequest.Arrangement.IN_LINE,
                part.widthMetre() / part.boards(),
                0)),
        new GlueUpRequest.Wood(
            density,
            wood.surface().oily(),
            List.of(percent, percent),
            Jointing.sinceSecond(blank.joints())),
        new GlueUpRequest.Clamps(
            clamps, shop.forceNewton(), shop.caulDepthMetre(), shop.headMetre()),
        request.shop().climate(),
        start.plusSeconds(blank.before()),
        GlueUpRequest.Pace.usual(request.shop().people()));
  }

  private int freeClamps(Moment moment) {
    int free = request.shop().clamps().count();
    for (Busy used : busy) {
      free = used.until().isAfter(moment) ? free - used.count() : free;
    }
    return Math.max(free, 0);
  }

  private static List<Refusal> tooLong(String name) {
    return List.of(
        Refusal.of(
            "shop.week",
            "No stretch of shop hours is long enough to close the glue-up of " + name + ".",
            "Glue it in stages on a longer day, or get a second pair of hands."));
  }
}
