package benchlore.schedules.project;

import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.Cautions;
import benchlore.schedules.answer.Message;
import benchlore.schedules.answer.StepId;
import benchlore.schedules.answer.WorkingLine;
import benchlore.schedules.caution.GlueUpRows;
import benchlore.schedules.glueup.GlueUpSchedule;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.quantity.Unit;
import benchlore.schedules.time.Interval;
import benchlore.schedules.time.Moment;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Glues up the blanks one after the other, each at the first hour of the shop that is warm enough
 * and has clamps free, and waits for the last of them before machining. Like blanks glued on one
 * day are one step.
 */
final class GlueSteps {
  private static final Message JOINT =
      Message.of("Joint each edge, then clamp the blank up without glue, cauls and all.");
  private static final Message NO_LIGHT =
      Message.of("No light through a joint held together by hand; mark faces and order.");
  private static final Message FRESH =
      Message.of(
          "Lay out clamps, brush, glue, wet rag and a clock. Then one fine pass over every edge, and"
              + " spread at once: a fresh edge takes glue best.");

  private static final List<Message> AGAIN =
      List.of(
          Message.of(
              "Edges, dry clamping, fine pass, mixing and spreading as at the first glue-up."));
  private static final Message NO_CLAMPS =
      Message.of(
          "No clamps: bring the edges together and work one along the other until they grab, then"
              + " leave them alone.");

  private final ProjectRequest request;
  private final PlanBuilder draft;
  private final GlueSessions sessions;
  private final GlueHow how;
  private int number;

  GlueSteps(ProjectRequest request, PlanBuilder draft) {
    this.request = request;
    this.draft = draft;
    this.sessions = new GlueSessions(request, draft);
    this.how = new GlueHow(request.materials().adhesive(), request.materials().wood());
  }

  /** Adds preparation, every glue-up, taking the clamps off, and the wait before machining. */
  void add() {
    int joints = 0;
    for (Part part : request.parts()) {
      joints = joints + (part.boards() - 1) * part.count();
    }
    if (joints == 0) {
      return;
    }
    prepare();
    for (Part part : request.parts()) {
      if (part.boards() > 1 && !draft.refused()) {
        part(part);
      }
    }
    if (!draft.refused()) {
      finish();
    }
  }

  /** What no session of gluing has room for, or is done already. */
  private void prepare() {
    double seconds = new Jointing(request).apartSecond();
    if (!(seconds > 0)) {
      return;
    }
    List<Interval> slots = draft.book(StepId.Task.DRY_CLAMP.once(), "dry clamping", seconds);
    if (slots.isEmpty()) {
      return;
    }
    draft.add(
        new Step(
            StepId.Task.DRY_CLAMP.once(),
            "Joint the edges and clamp up dry",
            Step.Kind.WORK,
            slots,
            List.of(JOINT, NO_LIGHT),
            List.of(MachineSteps.GUARD),
            List.of(),
            Optional.empty()));
  }

  private void part(Part part) {
    List<GlueSession> day = new ArrayList<>();
    for (GlueSession session : sessions.of(part)) {
      boolean sameDay =
          day.isEmpty() || day.get(0).work().start().date().equals(session.work().start().date());
      if (!sameDay) {
        flush(part, day);
        day = new ArrayList<>();
      }
      day.add(session);
    }
    if (!day.isEmpty()) {
      flush(part, day);
    }
  }

  private void flush(Part part, List<GlueSession> day) {
    number++;
    GlueSession first = day.get(0);
    double early = 0;
    for (GlueSession session : day) {
      Moment due = session.batch().clampsOff();
      early = Math.max(early, PlanBuilder.early(session.unclamp().start(), due));
    }
    if (early > 0) {
      draft.warn(StepId.Task.CLAMPS_OFF.number(number), TooEarly.joint(early));
    }
    draft.add(
        new Step(
            StepId.Task.GLUE.number(number),
            (first.jointingSecond() > 0 ? "Joint and glue up " : "Glue up ") + names(day),
            Step.Kind.WORK,
            slots(day, true),
            noted(part, first),
            cautions(first),
            working(part, first),
            Optional.empty()));
    draft.add(
        new Step(
            StepId.Task.CLAMPS_OFF.number(number),
            (first.batch().clamps() > 0 ? "Clamps off " : "Scrape the joints of ") + names(day),
            Step.Kind.WORK,
            slots(day, false),
            how.afterwards(number),
            List.of(),
            List.of(),
            Optional.of(new Step.Window(first.batch().clampsOff(), Optional.empty()))));
  }

  private static List<Interval> slots(List<GlueSession> day, boolean work) {
    List<Interval> slots = new ArrayList<>();
    for (GlueSession session : day) {
      slots.add(work ? session.work() : session.unclamp());
    }
    return slots;
  }

  private static String names(List<GlueSession> day) {
    StringBuilder names = new StringBuilder(day.get(0).label());
    for (int i = 1; i < day.size(); i++) {
      names.append(i + 1 == day.size() ? " and " : ", ").append(day.get(i).label());
    }
    return names.toString();
  }

  private List<Caution> cautions(GlueSession session) {
    List<Caution> own = new ArrayList<>(session.answer().cautions());
    if (JointSettling.of(request).isShortened()) {
      own.removeIf(caution -> caution.code().equals(GlueUpRows.SUNKEN_JOINT.code()));
    }
    return session.jointingSecond() > 0 ? Cautions.merged(own, List.of(MachineSteps.GUARD)) : own;
  }

  /** What comes before the glue, in full at the first blank. */
  private static List<Message> before(GlueSession session) {
    return session.jointingSecond() > 0 ? List.of(JOINT, NO_LIGHT, FRESH) : List.of(FRESH);
  }

  private List<WorkingLine> working(Part part, GlueSession session) {
    List<WorkingLine> working = new ArrayList<>(session.answer().working());
    working.addAll(how.working(part.thicknessMetre()));
    return working;
  }

  /** With what the tables say to mind, at the first glue-up. */
  private List<Message> noted(Part part, GlueSession first) {
    List<Message> all = new ArrayList<>(number == 1 ? Suited.glueNotes(request) : List.of());
    all.addAll(notes(part, first));
    return all;
  }

  private List<Message> notes(Part part, GlueSession session) {
    GlueUpSchedule schedule = session.answer().value();
    GlueUpSchedule.Batch batch = session.batch();
    GlueUpSchedule.Row row = schedule.rows().get(0);
    List<Message> notes = new ArrayList<>(number == 1 ? before(session) : AGAIN);
    if (number == 1) {
      notes.addAll(how.lines(number));
    }
    notes.add(
        Message.of(
            "Each blank: {0} boards. Spread and close it within {1} of the first glue; a steady"
                + " pace makes it {2}.",
            Quantity.of(part.boards(), Unit.COUNT),
            Quantity.of(schedule.assembly().totalSecond(), Unit.SECOND),
            Quantity.of(batch.spreadSecond() + batch.closeSecond(), Unit.SECOND)));
    notes.add(how.amount(batch.massKilogram(), part.thicknessMetre()));
    if (row.count() == 0) {
      notes.add(NO_CLAMPS);
    } else {
      notes.add(
          Message.of(
              "{0} clamps, no more than {1} apart, over and under in turn, each to about {2}.",
              Quantity.of(row.count(), Unit.COUNT),
              Quantity.of(row.spacingLimitMetre(), Unit.METRE),
              Quantity.of(row.forceEachNewton(), Unit.NEWTON)));
    }
    return notes;
  }

  private void finish() {
    Moment machine = sessions.machineFrom();
    Moment from = draft.ready();
    JointSettling settling = JointSettling.of(request);
    draft.add(
        new Step(
            StepId.Task.WAIT_JOINTS.once(),
            settling != JointSettling.NO_WATER
                ? "Let the joints settle before machining"
                : "Let the joints harden before machining",
            Step.Kind.WAIT,
            List.of(new Interval(from, from.orLater(machine))),
            settling.words(),
            List.of(),
            settling.working(),
            Optional.empty()));
    draft.readyFrom(machine);
    draft.buy(
        Purchase.of(
            Purchase.Kind.ADHESIVE,
            "adhesive",
            Quantity.of(sessions.cubicMetre(), Unit.CUBIC_METRE_LIQUID),
            "squeeze-out and what stays in the pot counted"));
  }
}
