package benchlore.schedules.project;

import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.Message;
import benchlore.schedules.answer.StepId;
import benchlore.schedules.caution.ShopRows;
import benchlore.schedules.time.Interval;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Machines the blanks to size, in the time the maker expects. */
final class MachineSteps {
  static final Caution GUARD = ShopRows.ROTATING_CUTTER.caution();

  private MachineSteps() {}

  static void add(ProjectRequest request, PlanBuilder draft) {
    double seconds = 0;
    for (Part part : request.parts()) {
      seconds = part.machiningSecond() * part.count() + seconds;
    }
    if (seconds <= 0) {
      return;
    }
    List<Interval> slots = draft.book(StepId.Task.MACHINE.once(), "machining", seconds);
    if (!slots.isEmpty()) {
      MachinePath path = new MachinePath(request.parts());
      draft.add(
          new Step(
              StepId.Task.MACHINE.once(),
              "Flatten, cut and shape the parts",
              Step.Kind.WORK,
              slots,
              notes(path),
              List.of(GUARD),
              path.working(),
              Optional.empty()));
    }
  }

  private static List<Message> notes(MachinePath path) {
    List<Message> notes = new ArrayList<>();
    notes.add(Message.of("Take the blank down from both faces in turn, so that it stays flat."));
    notes.add(Message.of("Leave the finished faces a little proud: sanding takes the last of it."));
    notes.addAll(path.notes());
    return notes;
  }
}
