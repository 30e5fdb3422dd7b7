package benchlore.schedules.plan;

import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.Datum;
import benchlore.schedules.answer.Figure;
import benchlore.schedules.answer.Line;
import benchlore.schedules.answer.Note;
import benchlore.schedules.answer.Provenance;
import benchlore.schedules.answer.Quantity;
import benchlore.schedules.answer.Unit;
import benchlore.schedules.calendar.Slot;
import benchlore.schedules.numeric.WallTime;
import benchlore.schedules.sanding.GrainRaising;
import benchlore.schedules.sanding.PoreFilling;
import benchlore.schedules.sanding.SandingExtras;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;

/**
 * What follows the last grade on bare wood and has to dry: grain raised and knocked off, pores
 * filled and levelled. All parts go through each together.
 */
final class SurfaceSteps {
  private static final List<Caution> FILLING =
      List.of(
          new Caution(
              "oily-rags",
              Caution.Severity.DANGER,
              Note.of("Rags with an oil-based filler heat themselves and can catch fire."),
              Note.of(
                  "Spread them flat outdoors or drown them in a lidded metal can, at once, each"
                      + " time.")),
          new Caution(
              "filler-vapour",
              Caution.Severity.HEALTH,
              Note.of("An oil-based filler gives off vapour that burns and is bad to breathe."),
              Note.of(
                  "Air the room, no flame or spark, gloves; its label and safety data sheet say"
                      + " the rest.")));
  private static final List<Caution> LEVELLING =
      List.of(
          new Caution(
              "filler-dust",
              Caution.Severity.HEALTH,
              Note.of("Filler is mineral; its dust can hold silica, which scars lungs for good."),
              Note.of("Sand it with extraction and a mask for fine dust, P100 or FFP3.")));

  private final Draft draft;
  private double packSeconds;
  private double levelSeconds;
  private double knockOffSeconds;
  private double area;
  private Optional<Datum> grainDries = Optional.empty();

  SurfaceSteps(Draft draft) {
    this.draft = draft;
  }

  /** Takes up what one part asks for. */
  void take(Part part, SandingExtras extras) {
    if (extras.grainRaising().isPresent()) {
      GrainRaising raising = extras.grainRaising().get();
      knockOffSeconds = raising.knockOff().seconds() + knockOffSeconds;
      grainDries = Optional.of(raising.drySeconds());
    }
    if (extras.poreFilling().isPresent()) {
      PoreFilling filling = extras.poreFilling().get();
      packSeconds = filling.packSeconds() + packSeconds;
      levelSeconds = filling.level().seconds() + levelSeconds;
      area = part.coatedSquareMetre() + area;
    }
  }

  /** Hands-on time of these steps, which is no part of sanding the bare wood. */
  double seconds() {
    return packSeconds + levelSeconds + knockOffSeconds;
  }

  void add() {
    if (grainDries.isPresent()) {
      wait("grain-dry", "Let the wetted wood dry", grainDries.get());
      work(
          new Work("knock-off", "Knock off the raised grain", knockOffSeconds, List.of()),
          Note.of("One light pass by hand; no more, or new fibres are freed to rise."));
    }
    if (packSeconds > 0) {
      work(
          new Work("fill-pores", "Fill the pores", packSeconds, FILLING),
          Note.of(
              "Stir it, spread it, pack it across the grain; when it hazes wipe across, then"
                  + " lightly along."));
      wait("filler-dry", "Let the filler dry", PlanRules.FILLER_DRIES);
      work(
          new Work("level-filler", "Level the filler", levelSeconds, LEVELLING),
          Note.of("Until the wood is clean between the pores and each pore is full."));
      draft.buy(
          new Purchase(
              "Grain filler",
              Quantity.of(area, Unit.SQUARE_METRE),
              "enough for this face; in a colour that suits, and that your finish goes over"));
    }
  }

  private record Work(String id, String title, double seconds, List<Caution> cautions) {}

  private void work(Work work, Note note) {
    List<Slot> slots = draft.book(work.id(), work.title(), work.seconds());
    if (!slots.isEmpty()) {
      draft.add(
          new Step(
              work.id(),
              work.title(),
              Step.Kind.WORK,
              slots,
              List.of(note),
              work.cautions(),
              List.of(),
              Optional.empty()));
    }
  }

  private void wait(String id, String title, Datum dries) {
    LocalDateTime from = draft.ready();
    LocalDateTime until = WallTime.plus(from, Math.ceil(dries.high()));
    draft.add(
        new Step(
            id,
            title,
            Step.Kind.WAIT,
            List.of(new Slot(from, until)),
            List.of(),
            List.of(),
            List.of(
                new Line(
                    Figure.of("wait", dries.high(), dries.unit(), dries.from()),
                    "the longest of the range; the label wins",
                    List.of(),
                    Provenance.commonPractice("bone dry before it is sanded"))),
            Optional.empty()));
    draft.readyFrom(until);
  }
}
