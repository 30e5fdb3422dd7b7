package benchlore.schedules.project;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.Cautions;
import benchlore.schedules.answer.Message;
import benchlore.schedules.answer.StepId;
import benchlore.schedules.answer.WorkingLine;
import benchlore.schedules.caution.FitRows;
import benchlore.schedules.movement.Film;
import benchlore.schedules.movement.Fit;
import benchlore.schedules.movement.FitRequest;
import benchlore.schedules.movement.FitSchedule;
import benchlore.schedules.movement.Opening;
import benchlore.schedules.movement.Tape;
import benchlore.schedules.time.Interval;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The dry fit, straight after machining, while a stroke of the plane costs no sanding: every part
 * in its place on bare wood, with room for the film that is to come. Gaps of moving parts are
 * looked at again when they are sanded.
 */
final class FitSteps {
  private FitSteps() {}

  static void add(ProjectRequest request, PlanBuilder draft) {
    List<Message> notes = new ArrayList<>();
    List<WorkingLine> working = new ArrayList<>();
    List<Caution> cautions = List.of();
    notes.add(
        Message.of(
            "Put every part in its place, bare, with its fixings. Mend now what is tight: a stroke of"
                + " the plane later is sanding to do again, and then a coat."));
    for (Part part : request.parts()) {
      Answer<FitSchedule> answer = Fit.plan(question(request, part));
      if (answer instanceof Answer.Given<FitSchedule> given) {
        note(part, given.value(), notes);
        working.addAll(given.working());
        cautions = Cautions.merged(cautions, told(request, given.cautions()));
      } else {
        draft.refuse(((Answer.Refused<FitSchedule>) answer).reasons());
        return;
      }
    }
    List<Interval> slots =
        draft.book(
            StepId.Task.DRY_FIT.once(), "the dry fit", FitTime.dryFitSecond(request.parts()));
    if (!slots.isEmpty()) {
      draft.add(
          new Step(
              StepId.Task.DRY_FIT.once(),
              isLate(request) ? "Dry fit, before the first coat" : "Dry fit, before sanding",
              Step.Kind.WORK,
              slots,
              notes,
              cautions,
              working,
              Optional.empty()));
    }
  }

  /** Gaps once more before the first coat: sanding took some, and wetted wood has swollen. */
  static void check(ProjectRequest request, PlanBuilder draft) {
    double seconds = FitTime.checkSecond(request.parts());
    if (!(seconds > 0) || isLate(request)) {
      return;
    }
    StepId id = StepId.Task.FIT_CHECK.once();
    List<Interval> slots = draft.book(id, "a last look at the gaps", seconds);
    if (!slots.isEmpty()) {
      boolean wetted = request.materials().layers().get(0).finish().use().raisesGrain();
      draft.add(
          new Step(
              id,
              "Look at the gaps again",
              Step.Kind.WORK,
              slots,
              List.of(
                  Message.of(
                      "Only the parts that move, with what set their gaps. It comes off again before"
                          + " the coat."
                          + (wetted ? " The wetted wood is dry, or it still stands proud." : ""))),
              List.of(),
              List.of(),
              Optional.empty()));
    }
  }

  /** Whether the parts were sanded before they were fitted, as plans once had it. */
  static boolean isLate(ProjectRequest request) {
    List<Interval> sanded = request.progress().slots(StepId.Task.SAND.once());
    List<Interval> fitted = request.progress().slots(StepId.Task.DRY_FIT.once());
    return !sanded.isEmpty()
        && (fitted.isEmpty() || fitted.get(0).start().isAfter(sanded.get(0).start()));
  }

  /** What the plan has dealt with needs no caution: how a gap is set, and boards that settled. */
  private static List<Caution> told(ProjectRequest request, List<Caution> all) {
    List<String> dealt = new ArrayList<>(List.of(FitRows.GAP_TOO_WIDE_FOR_TAPE.code()));
    if (!StockSteps.readsUnsettled(request)) {
      dealt.add(FitRows.LET_WOOD_SETTLE.code());
      dealt.add(FitRows.COLD_WOOD_SETTLES_SLOWLY.code());
    }
    List<Caution> told = new ArrayList<>();
    for (Caution caution : all) {
      if (!dealt.contains(caution.code())) {
        told.add(caution);
      }
    }
    return told;
  }

  private static FitRequest question(ProjectRequest request, Part part) {
    FitRequest fit = StockSteps.fit(request, part);
    if (part.moves().hanging().isEmpty()) {
      return fit;
    }
    double dry = 0;
    for (Layer layer : request.materials().layers()) {
      dry = layer.dryMicron() + dry;
    }
    Film film = new Film(1, dry, 100);
    return fit.withOpening(
        new Opening(
            film, film, ProjectFigures.SLIP.high(), part.moves().hanging().get(), Tape.common()));
  }

  private static void note(Part part, FitSchedule schedule, List<Message> notes) {
    if (schedule.clearance().isEmpty()) {
      FitWords.growth(part, schedule.movement()).ifPresent(notes::add);
    } else {
      notes.add(FitWords.gap(part, schedule.clearance().get()));
    }
  }
}
