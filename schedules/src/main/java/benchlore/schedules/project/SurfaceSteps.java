package benchlore.schedules.project;

import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.Message;
import benchlore.schedules.answer.QuantityKey;
import benchlore.schedules.answer.StepId;
import benchlore.schedules.answer.WorkingLine;
import benchlore.schedules.caution.ShopRows;
import benchlore.schedules.quantity.Figure;
import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.sanding.GrainRaising;
import benchlore.schedules.sanding.SandingExtras;
import benchlore.schedules.time.Interval;
import benchlore.schedules.time.Moment;
import java.util.List;
import java.util.Optional;

/**
 * What follows the last grade on bare wood and has to dry: grain raised and knocked off. All parts
 * go through it together.
 */
final class SurfaceSteps {
  private static final Caution DUST = ShopRows.WOOD_DUST.caution();

  private final PlanBuilder draft;
  private double knockOffSeconds;
  private Optional<SourcedRange> grainDries = Optional.empty();

  SurfaceSteps(PlanBuilder draft) {
    this.draft = draft;
  }

  /** Takes up what some parts ask for. */
  void take(SandingExtras extras) {
    if (extras.grainRaising().isPresent()) {
      GrainRaising raising = extras.grainRaising().get();
      knockOffSeconds = raising.knockOff().seconds() + knockOffSeconds;
      grainDries = Optional.of(raising.drySeconds());
    }
  }

  /** Hands-on time of this step, which is no part of sanding the bare wood. */
  double seconds() {
    return knockOffSeconds;
  }

  void add() {
    if (grainDries.isPresent()) {
      wait(StepId.Task.GRAIN_DRY.once(), "Let the wetted wood dry", grainDries.get());
      work(
          new Work(
              StepId.Task.KNOCK_OFF.once(),
              "Knock off the raised grain",
              knockOffSeconds,
              List.of(DUST)),
          Message.of("One light pass by hand; no more, or new fibres are freed to rise."));
    }
  }

  private record Work(StepId id, String title, double seconds, List<Caution> cautions) {}

  private void work(Work work, Message... notes) {
    List<Interval> slots = draft.book(work.id(), work.title(), work.seconds());
    if (!slots.isEmpty()) {
      draft.add(
          new Step(
              work.id(),
              work.title(),
              Step.Kind.WORK,
              slots,
              List.of(notes),
              work.cautions(),
              List.of(),
              Optional.empty()));
    }
  }

  private void wait(StepId id, String title, SourcedRange dries) {
    Moment from = draft.ready();
    Moment until = from.plusSeconds(Math.ceil(dries.high()));
    WorkingLine line =
        new WorkingLine(
            QuantityKey.WAIT_TO_DRY,
            Figure.of("wait", dries.high(), dries.unit(), dries.from()),
            "the longest of the range; longer in the cold, and the label wins",
            List.of(),
            Provenance.commonPractice("bone dry before it is sanded"));
    draft.add(Step.waiting(id, title, new Interval(from, until), List.of(), List.of(line)));
    draft.readyFrom(until);
  }
}
