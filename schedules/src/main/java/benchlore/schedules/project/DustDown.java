package benchlore.schedules.project;

import benchlore.schedules.answer.Message;
import benchlore.schedules.answer.QuantityKey;
import benchlore.schedules.answer.StepId;
import benchlore.schedules.answer.WorkingLine;
import benchlore.schedules.material.ApplicationMethod;
import benchlore.schedules.material.FinishRole;
import benchlore.schedules.quantity.Figure;
import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;
import java.util.List;

/**
 * A film that stays wet for hours is not laid in air full of sanding dust: sand one day, coat the
 * next. What is wiped on and off, and what soaks in, need not wait.
 */
final class DustDown {
  private static final SourcedRange OVERNIGHT =
      SourcedRange.of(
          12 * 3600.0,
          Unit.SECOND,
          Provenance.commonPractice("sand one day, varnish the next, in a swept room"));

  private DustDown() {}

  /** Holds the first coat back until the dust is down. */
  static void add(ProjectRequest request, PlanBuilder draft) {
    if (!waits(request)) {
      return;
    }
    for (Step step : draft.steps()) {
      if (step.id().is(StepId.Task.SAND)) {
        draft.readyFrom(step.end().plusSeconds(OVERNIGHT.high()));
      }
    }
  }

  /** Why the first coat waits. */
  static List<Message> notes(ProjectRequest request) {
    return waits(request)
        ? List.of(
            Message.of(
                "Not on the day you sanded: the dust comes down onto a wet film. Vacuum, wipe, and"
                    + " leave the room still first."))
        : List.of();
  }

  /** How that wait came about. */
  static List<WorkingLine> working(ProjectRequest request) {
    return waits(request)
        ? List.of(
            new WorkingLine(
                QuantityKey.DUST_COMES_DOWN,
                Figure.of("dust comes down", OVERNIGHT.high(), Unit.SECOND, OVERNIGHT.from()),
                "first coat = end of sanding the bare wood + a night, at the earliest",
                List.of(),
                OVERNIGHT.from()))
        : List.of();
  }

  private static boolean waits(ProjectRequest request) {
    Layer first = request.materials().layers().get(0);
    ApplicationMethod method = first.coats().method();
    boolean wiped = method == ApplicationMethod.WIPE || method == ApplicationMethod.PAD;
    return first.finish().role() == FinishRole.FILM && !wiped;
  }
}
