package benchlore.schedules.project;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.Cautions;
import benchlore.schedules.answer.Message;
import benchlore.schedules.answer.QuantityKey;
import benchlore.schedules.answer.StepId;
import benchlore.schedules.answer.WorkingLine;
import benchlore.schedules.material.Finish;
import benchlore.schedules.material.Sheen;
import benchlore.schedules.quantity.Figure;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;
import benchlore.schedules.sanding.GrainRaising;
import benchlore.schedules.sanding.Grit;
import benchlore.schedules.sanding.Sanding;
import benchlore.schedules.sanding.SandingArea;
import benchlore.schedules.sanding.SandingPass;
import benchlore.schedules.sanding.SandingRequest;
import benchlore.schedules.sanding.SandingSchedule;
import benchlore.schedules.sanding.SurfaceWanted;
import benchlore.schedules.time.Interval;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Sands every part to the grade its finish asks for, and counts the discs. */
final class SandSteps {
  private final ProjectRequest request;
  private final PlanBuilder draft;
  private final List<Message> notes = new ArrayList<>();
  private final List<WorkingLine> working = new ArrayList<>();
  private List<Caution> cautions = List.of();
  private final List<Purchase> discs = new ArrayList<>();
  private final SurfaceSteps surface;
  private double seconds;
  private double between;
  private double dustKilogram;

  SandSteps(ProjectRequest request, PlanBuilder draft) {
    this.request = request;
    this.draft = draft;
    this.surface = new SurfaceSteps(draft);
  }

  void add() {
    for (Part part : request.parts()) {
      Answer<SandingSchedule> answer = Sanding.plan(sanding(part));
      if (answer instanceof Answer.Given<SandingSchedule> given) {
        take(part, given);
      } else {
        draft.refuse(((Answer.Refused<SandingSchedule>) answer).reasons());
      }
    }
    if (draft.refused()) {
      return;
    }
    notes.add(Message.of("All of it makes {0} of dust.", Quantity.of(dustKilogram, Unit.KILOGRAM)));
    List<Interval> slots =
        draft.book(StepId.Task.SAND.once(), "sanding", seconds - between - surface.seconds());
    if (!slots.isEmpty()) {
      SandDust dust = SandDust.of(request, slots, dustKilogram);
      notes.addAll(dust.notes());
      working.addAll(dust.working());
      cautions = Cautions.merged(cautions, dust.cautions());
      draft.add(
          new Step(
              StepId.Task.SAND.once(),
              "Sand the bare wood",
              Step.Kind.WORK,
              slots,
              notes,
              cautions,
              working,
              Optional.empty()));
    }
    surface.add();
    discs.forEach(draft::buy);
  }

  private void take(Part part, Answer.Given<SandingSchedule> given) {
    SandingSchedule schedule = given.value();
    seconds = seconds + schedule.totals().seconds();
    dustKilogram = dustKilogram + schedule.totals().dustKilogram();
    StringBuilder grades = new StringBuilder();
    List<Quantity> minutes = new ArrayList<>();
    for (SandingPass pass : schedule.passes()) {
      count(pass);
      grades.append(grades.length() == 0 ? "" : ", then ");
      grades.append(pass.grit().label()).append(" for {").append(minutes.size()).append("}");
      minutes.add(Quantity.of(pass.seconds(), Unit.SECOND));
    }
    notes.add(new Message(part.name() + ": " + grades + ".", minutes));
    schedule.extras().endGrain().ifPresent(this::endGrain);
    schedule.extras().grainRaising().ifPresent(this::grainRaising);
    schedule.extras().poreFilling().ifPresent(filling -> count(filling.level()));
    surface.take(part, schedule.extras());
    schedule
        .extras()
        .betweenCoats()
        .ifPresent(scuff -> between = scuff.each().seconds() * scuff.times() + between);
    if (request.materials().wood().hardness().isEmpty()) {
      working.add(assumedHardness());
    }
    working.addAll(named(part, given.working()));
    cautions = Cautions.merged(cautions, given.cautions());
  }

  private void endGrain(SandingPass pass) {
    count(pass);
    notes.add(
        Message.of(
            "End grain: on to " + pass.grit().label() + ", or it drinks finish and darkens."));
  }

  private void grainRaising(GrainRaising raising) {
    count(raising.knockOff());
    notes.add(
        Message.of(
            "Wet the bare wood last and wipe off what stands; once dry, the whiskers come off with "
                + raising.knockOff().grit().label()
                + "."));
  }

  private void count(SandingPass pass) {
    Purchase.Item item = Purchase.Item.abrasive(pass.grit());
    for (int i = 0; i < discs.size(); i++) {
      if (discs.get(i).item().equals(item)) {
        discs.set(i, discs(pass.grit(), discs.get(i).amount().value() + pass.discs()));
        return;
      }
    }
    discs.add(discs(pass.grit(), pass.discs()));
  }

  private static Purchase discs(Grit grit, double count) {
    return new Purchase(
        Purchase.Item.abrasive(grit),
        grit.label(),
        "",
        Quantity.of(count, Unit.COUNT),
        "discs or sheets, all parts");
  }

  private static WorkingLine assumedHardness() {
    SourcedRange assumed = ProjectFigures.HARDNESS;
    return new WorkingLine(
        QuantityKey.ASSUMED_HARDNESS,
        Figure.of("side hardness", assumed.mid(), assumed.unit(), assumed.from()),
        "assumed: the species states no hardness",
        List.of(),
        assumed.from());
  }

  private static List<WorkingLine> named(Part part, List<WorkingLine> lines) {
    List<WorkingLine> named = new ArrayList<>();
    for (WorkingLine line : lines) {
      named.add(line.named(part.name() + ": " + line.result().name()));
    }
    return named;
  }

  private SandingRequest sanding(Part part) {
    Finish finish = request.materials().finish();
    return new SandingRequest(
        part.surface(),
        Materials.sandingWood(request.materials().wood()),
        new SandingArea(part.coatedSquareMetre(), part.endGrainSquareMetre()),
        new SurfaceWanted(
            finish.use().finalGrade(),
            finish.sandedBetweenCoats()
                ? Optional.of(finish.use().betweenCoatGrade())
                : Optional.empty(),
            request.coats().coats(),
            finish.use().raisesGrain(),
            request.coats().sheen() == Sheen.GLOSS),
        request.shop().sanding());
  }
}
