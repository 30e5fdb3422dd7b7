package benchlore.schedules.plan;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Note;
import benchlore.schedules.answer.Quantity;
import benchlore.schedules.answer.Refusal;
import benchlore.schedules.answer.Unit;
import benchlore.schedules.calendar.Slot;
import benchlore.schedules.glueup.GlueUp;
import benchlore.schedules.glueup.GlueUpRequest;
import benchlore.schedules.glueup.GlueUpSchedule;
import benchlore.schedules.wood.WoodData;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Glues up the blanks one after the other, each at the first hour of the shop that is warm enough
 * and has clamps free, and waits for the last of them before machining.
 */
final class GlueSteps {
  /**
   * Clamps in use.
   *
   * @param until when they come off
   * @param count how many
   */
  private record Busy(LocalDateTime until, int count) {}

  private final PlanRequest request;
  private final Draft draft;
  private final List<Busy> busy = new ArrayList<>();
  private LocalDateTime machine;
  private double kilogram;
  private double litres;

  GlueSteps(PlanRequest request, Draft draft) {
    this.request = request;
    this.draft = draft;
    this.machine = draft.ready();
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
    prepare(joints);
    for (Part part : request.parts()) {
      for (int n = 1; n <= part.count() && part.boards() > 1 && !draft.refused(); n++) {
        String name = part.count() == 1 ? part.name() : part.name() + " " + n;
        blank(part, name, part.boards() - 1, 1);
      }
    }
    if (!draft.refused()) {
      finish();
    }
  }

  private void prepare(int joints) {
    List<Slot> slots = draft.book("dry clamping", PlanRules.JOINT.high() * joints);
    if (slots.isEmpty()) {
      return;
    }
    draft.add(
        new Step(
            "dry-clamp",
            "Joint the edges and clamp up dry",
            Step.Kind.WORK,
            slots,
            List.of(
                Note.of("Joint each edge, then clamp the blank up without glue, cauls and all."),
                Note.of("No light through a joint held together by hand; mark faces and order."),
                Note.of("Lay out clamps, brush, glue, wet rag and a clock where you will glue.")),
            List.of(),
            List.of(),
            Optional.empty()));
  }

  /** One blank, or one share of it where it can't be closed in one go. */
  private void blank(Part part, String name, int joints, int share) {
    LocalDateTime from = draft.ready();
    LocalDateTime latest = from.plusDays(PlanRules.GLUE_DAYS);
    List<Refusal> last = List.of();
    while (from.isBefore(latest)) {
      Optional<Slot> slot = draft.unbroken("a glue-up", from, 600);
      if (slot.isEmpty()) {
        return;
      }
      LocalDateTime start = slot.get().start();
      int free = freeClamps(start);
      Answer<GlueUpSchedule> answer = GlueUp.plan(glueUp(part, name, joints, start, free));
      if (answer instanceof Answer.Given<GlueUpSchedule> given && fits(given.value(), start)) {
        add(part, name, given, share);
        return;
      }
      last = answer instanceof Answer.Refused<GlueUpSchedule> r ? r.reasons() : tooLong(name);
      from = start.plusHours(1);
    }
    draft.refuse(last);
  }

  private boolean fits(GlueUpSchedule schedule, LocalDateTime start) {
    GlueUpSchedule.Batch first = schedule.batches().get(0);
    double seconds = first.spreadSecond() + first.closeSecond();
    Optional<Slot> slot = draft.unbroken("a glue-up", start, seconds);
    return slot.isPresent() && slot.get().start().equals(start);
  }

  private void add(Part part, String name, Answer.Given<GlueUpSchedule> given, int share) {
    GlueUpSchedule schedule = given.value();
    GlueUpSchedule.Batch first = schedule.batches().get(0);
    boolean whole = schedule.batches().size() == 1;
    String label = whole && share == 1 ? name : name + ", stage " + share;
    double seconds = first.spreadSecond() + first.closeSecond();
    Slot slot = draft.unbroken("a glue-up", first.start(), seconds).orElseThrow();
    draft.add(
        new Step(
            "glue-" + name.toLowerCase(java.util.Locale.ROOT).replace(' ', '-') + "-" + share,
            "Glue up: " + label,
            Step.Kind.WORK,
            List.of(slot),
            notes(schedule, first),
            given.cautions(),
            given.working(),
            Optional.empty()));
    busy.add(new Busy(first.clampsOff(), first.clamps()));
    kilogram = kilogram + first.massKilogram();
    litres = first.massKilogram() / request.materials().adhesive().density().mid() + litres;
    machine = later(machine, schedule.machine().at());
    draft.readyFrom(slot.end());
    unclamp(label, first.clampsOff(), name + "-" + share);
    if (!whole) {
      int left = 0;
      for (int i = 1; i < schedule.batches().size(); i++) {
        for (GlueUpSchedule.Share rest : schedule.batches().get(i).shares()) {
          left = left + rest.count();
        }
      }
      blank(part, name, left, share + 1);
    }
  }

  private static List<Note> notes(GlueUpSchedule schedule, GlueUpSchedule.Batch batch) {
    GlueUpSchedule.Row row = schedule.rows().get(0);
    List<Note> notes = new ArrayList<>();
    notes.add(
        Note.of(
            "Spread and close within {0} of the first glue; your own pace makes it about {1}.",
            Quantity.of(schedule.assembly().totalSecond(), Unit.SECOND),
            Quantity.of(batch.spreadSecond() + batch.closeSecond(), Unit.SECOND)));
    notes.add(
        Note.of("Pour out {0} of adhesive.", Quantity.of(batch.massKilogram(), Unit.KILOGRAM)));
    if (row.count() > 0) {
      notes.add(
          Note.of(
              "{0} clamps, no more than {1} apart, over and under in turn, each to about {2}.",
              Quantity.of(row.count(), Unit.COUNT),
              Quantity.of(row.spacingLimitMetre(), Unit.METRE),
              Quantity.of(row.forceEachNewton(), Unit.NEWTON)));
    }
    notes.add(Note.of("An even row of small beads along the joint: enough glue, enough pressure."));
    return notes;
  }

  private void unclamp(String label, LocalDateTime off, String id) {
    Optional<Slot> slot = draft.unbroken("taking clamps off", off, PlanRules.UNCLAMP.high());
    if (slot.isEmpty()) {
      return;
    }
    draft.add(
        new Step(
            "clamps-off-" + id.toLowerCase(java.util.Locale.ROOT).replace(' ', '-'),
            "Clamps off: " + label,
            Step.Kind.WORK,
            List.of(slot.get()),
            List.of(Note.of("Scrape the beads while they are rubbery or chip them once hard.")),
            List.of(),
            List.of(),
            Optional.of(new Step.Window(off, Optional.empty()))));
    machine = later(machine, slot.get().end());
  }

  private void finish() {
    draft.add(
        new Step(
            "wait-joints",
            "Let the joints settle before machining",
            Step.Kind.WAIT,
            List.of(new Slot(draft.ready(), later(machine, draft.ready()))),
            List.of(
                Note.of(
                    "Glue water swells the wood at a joint. Planed flat now, the joint sinks later"
                        + " and shows under the finish.")),
            List.of(),
            List.of(),
            Optional.empty()));
    draft.readyFrom(machine);
    draft.buy(
        new Purchase(
            "adhesive",
            Quantity.of(litres, Unit.CUBIC_METRE_LIQUID),
            "squeeze-out and what stays in the pot counted"));
  }

  private GlueUpRequest glueUp(
      Part part, String name, int joints, LocalDateTime start, int freeClamps) {
    WoodData wood = request.materials().wood();
    double moist = 1 + request.moisturePercent() / 100;
    double density = wood.specificGravity().low() * 1000 * moist;
    GlueUpRequest.Clamps clamps = request.shop().clamps();
    double board = part.widthMetre() / part.boards();
    return new GlueUpRequest(
        request.materials().adhesive(),
        List.of(
            new GlueUpRequest.Joint(
                name,
                part.lengthMetre(),
                part.thicknessMetre(),
                joints,
                GlueUpRequest.Arrangement.IN_LINE,
                board,
                0)),
        new GlueUpRequest.Wood(
            density,
            wood.oily(),
            List.of(request.moisturePercent(), request.moisturePercent()),
            3_600),
        new GlueUpRequest.Clamps(
            freeClamps, clamps.forceNewton(), clamps.caulDepthMetre(), clamps.headMetre()),
        request.shop().climate(),
        start,
        GlueUpRequest.Pace.usual(request.shop().people()));
  }

  private int freeClamps(LocalDateTime moment) {
    int free = request.shop().clamps().count();
    for (Busy used : busy) {
      free = used.until().isAfter(moment) ? free - used.count() : free;
    }
    return Math.max(free, 1);
  }

  private static List<Refusal> tooLong(String name) {
    return List.of(
        Refusal.of(
            "shop.week",
            "No stretch of shop hours is long enough to close the glue-up of " + name + ".",
            "Glue it in stages on a longer day, or get a second pair of hands."));
  }

  private static LocalDateTime later(LocalDateTime a, LocalDateTime b) {
    return a.isAfter(b) ? a : b;
  }
}
