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
        note(part, given.value(), notes);
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
    if (part.moves().hanging().isEmpty()) {
      return fit;
    }
    CoatChoice coats = request.coats();
    double solids = request.materials().finish().liquid().solidsByVolume().high();
    Film film = new Film(coats.coats(), coats.wetFilmMicron(), solids);
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
