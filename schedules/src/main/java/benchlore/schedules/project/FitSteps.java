package benchlore.schedules.project;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.Cautions;
import benchlore.schedules.answer.Message;
import benchlore.schedules.answer.StepId;
import benchlore.schedules.answer.WorkingLine;
import benchlore.schedules.movement.Film;
import benchlore.schedules.movement.Fit;
import benchlore.schedules.movement.FitRequest;
import benchlore.schedules.movement.FitSchedule;
import benchlore.schedules.movement.Opening;
import benchlore.schedules.movement.Tape;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.quantity.Unit;
import benchlore.schedules.time.Interval;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The dry fit: every part in its place on bare wood, with tape for the film that is to come. */
final class FitSteps {
  private FitSteps() {}

  static void add(ProjectRequest request, PlanBuilder draft) {
    List<Message> notes = new ArrayList<>();
    List<WorkingLine> working = new ArrayList<>();
    List<Caution> cautions = List.of();
    int count = 0;
    notes.add(
        Message.of(
            "Put every part in its place, bare, with its fixings. Mend now what is tight: a coated"
                + " edge that has to be planed is a coat to do again."));
    for (Part part : request.parts()) {
      count = count + part.count();
      Answer<FitSchedule> answer = Fit.plan(question(request, part));
      if (answer instanceof Answer.Given<FitSchedule> given) {
        notes.add(note(part, given.value()));
        working.addAll(given.working());
        cautions = Cautions.merged(cautions, given.cautions());
      } else {
        draft.refuse(((Answer.Refused<FitSchedule>) answer).reasons());
        return;
      }
    }
    List<Interval> slots =
        draft.book(StepId.Task.DRY_FIT.once(), "the dry fit", ProjectFigures.FIT.high() * count);
    if (!slots.isEmpty()) {
      draft.add(
          new Step(
              StepId.Task.DRY_FIT.once(),
              "Dry fit, before the first coat",
              Step.Kind.WORK,
              slots,
              notes,
              cautions,
              working,
              Optional.empty()));
    }
  }

  private static FitRequest question(ProjectRequest request, Part part) {
    FitRequest fit = StockSteps.fit(request, part);
    if (!part.moves()) {
      return fit;
    }
    CoatChoice coats = request.coats();
    double solids = request.materials().finish().liquid().solidsByVolume().high();
    Film film = new Film(coats.coats(), coats.wetFilmMicron(), solids);
    return fit.withOpening(
        new Opening(
            film, film, ProjectFigures.SLIP.high(), Opening.Hanging.ONE_EDGE, Tape.common()));
  }

  private static Message note(Part part, FitSchedule schedule) {
    if (schedule.clearance().isEmpty()) {
      return Message.of(
          part.name()
              + ": its width will grow by {0} in the damp season and shrink by {1} in the dry.",
          Quantity.of(schedule.movement().swellMetre(), Unit.METRE),
          Quantity.of(schedule.movement().shrinkMetre(), Unit.METRE));
    }
    FitSchedule.Clearance clearance = schedule.clearance().get();
    Quantity gap = Quantity.of(clearance.gapMetre(), Unit.METRE);
    if (clearance.stacks().isEmpty()) {
      return Message.of(
          part.name()
              + ": leave {0} at the latch side, set with a slip of that thickness; a part that"
              + " slides needs half of it on each side.",
          gap);
    }
    FitSchedule.TapeStack stack = clearance.stacks().get(0);
    return Message.of(
        part.name()
            + ": leave {0} at the latch side. {1} layers of "
            + stack.tape().name()
            + " give it; a part that slides needs half of it on each side.",
        gap,
        Quantity.of(stack.layers(), Unit.COUNT));
  }
}
