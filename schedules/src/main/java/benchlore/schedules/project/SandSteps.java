package benchlore.schedules.project;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.Cautions;
import benchlore.schedules.answer.Checks;
import benchlore.schedules.answer.Message;
import benchlore.schedules.answer.QuantityKey;
import benchlore.schedules.answer.StepId;
import benchlore.schedules.answer.WorkingLine;
import benchlore.schedules.caution.ShopRows;
import benchlore.schedules.material.Finish;
import benchlore.schedules.quantity.Figure;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;
import benchlore.schedules.sanding.BetweenCoats;
import benchlore.schedules.sanding.FinishLook;
import benchlore.schedules.sanding.GrainRaising;
import benchlore.schedules.sanding.Sanding;
import benchlore.schedules.sanding.SandingPass;
import benchlore.schedules.sanding.SandingRequest;
import benchlore.schedules.sanding.SandingSchedule;
import benchlore.schedules.sanding.StartSurface;
import benchlore.schedules.sanding.SurfaceWanted;
import benchlore.schedules.time.Interval;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Sands every part to the grade its finish asks for, and counts the discs. */
final class SandSteps {
  private static final Message ONE_GRADE_AFTER_THE_OTHER =
      Message.of(
          "All of it with one grade before the next is taken: pencil lines across the wood, sand"
              + " until they are gone, wipe, look in raking light.");

  private final ProjectRequest request;
  private final PlanBuilder draft;
  private final List<Message> notes = new ArrayList<>();
  private final List<WorkingLine> working = new ArrayList<>();
  private List<Caution> cautions = List.of();
  private final Discs discs;
  private final SurfaceSteps surface;
  private final LayerOver over;
  private boolean severalGrades;
  private double seconds;
  private double between;
  private double dustKilogram;

  SandSteps(ProjectRequest request, PlanBuilder draft) {
    this.request = request;
    this.draft = draft;
    this.discs = new Discs(request.shop().sanding().shelf());
    this.surface = new SurfaceSteps(draft);
    this.over = new LayerOver(request.materials().suits());
  }

  void add() {
    checkSurfaces();
    if (draft.refused()) {
      return;
    }
    for (SandedGroup group : SandedGroup.of(request.parts())) {
      SandingRequest sanding = sanding(group);
      Answer<SandingSchedule> answer = Sanding.plan(sanding);
      if (answer instanceof Answer.Given<SandingSchedule> given) {
        take(group, sanding, given);
      } else {
        draft.refuse(((Answer.Refused<SandingSchedule>) answer).reasons());
      }
    }
    if (draft.refused()) {
      return;
    }
    if (severalGrades) {
      notes.add(ONE_GRADE_AFTER_THE_OTHER);
    }
    Finish first = request.materials().layers().get(0).finish();
    notes.addAll(WoodNotes.sanded(request.materials().wood(), first));
    cautions =
        Cautions.merged(cautions, WoodNotes.sandedCautions(request.materials().wood(), first));
    notes.add(Message.of("All of it makes {0} of dust.", Quantity.of(dustKilogram, Unit.KILOGRAM)));
    PoreAdvice.of(request).ifPresent(notes::add);
    step();
    surface.add();
    discs.purchases().forEach(draft::buy);
  }

  private void step() {
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
  }

  /** Of alike surfaces only the roughest is planned, so all are looked at first. */
  private void checkSurfaces() {
    Checks checks = new Checks();
    for (Part part : request.parts()) {
      part.surface().check(checks);
    }
    draft.refuse(checks.refusals());
  }

  private void take(
      SandedGroup group, SandingRequest sanding, Answer.Given<SandingSchedule> given) {
    SandingSchedule schedule = given.value();
    seconds = seconds + schedule.totals().seconds();
    dustKilogram = dustKilogram + schedule.totals().dustKilogram();
    passes(group.names(), schedule.passes());
    Sanding.opener(sanding).ifPresent(pass -> opener(group.names(), pass));
    schedule.extras().endGrain().ifPresent(this::endGrain);
    schedule.extras().grainRaising().ifPresent(this::grainRaising);
    surface.take(schedule.extras());
    schedule.extras().betweenCoats().ifPresent(this::betweenCoats);
    otherCoats(group);
    if (request.materials().wood().hardness().isEmpty()) {
      working.add(assumedHardness());
    }
    working.addAll(named(group.names(), given.working()));
    cautions =
        Cautions.merged(
            cautions, own(sanding.start(), PoreAdvice.without(request, given.cautions())));
  }

  private void passes(String names, List<SandingPass> passes) {
    StringBuilder grades = new StringBuilder();
    List<Quantity> minutes = new ArrayList<>();
    for (SandingPass pass : passes) {
      discs.count(pass);
      grades.append(minutes.isEmpty() ? "" : ", then ");
      grades.append(pass.grit().label()).append(" for {").append(minutes.size()).append("}");
      minutes.add(Quantity.of(pass.seconds(), Unit.SECOND));
    }
    severalGrades = severalGrades || passes.size() > 1;
    if (!minutes.isEmpty()) {
      notes.add(new Message(names + ": " + grades + ".", minutes));
    }
  }

  private void opener(String names, SandingPass pass) {
    discs.count(pass);
    seconds = seconds + pass.seconds();
    notes.add(
        Message.of(
            names
                + ": nothing to do; open the wood with "
                + pass.grit().label()
                + ", a few light strokes."));
  }

  private void betweenCoats(BetweenCoats scuff) {
    between = scuff.each().seconds() * scuff.times() + between;
    discs.countBetweenCoats(scuff.each(), scuff.times());
  }

  private void endGrain(SandingPass pass) {
    discs.count(pass);
    notes.add(
        Message.of(
            "End grain: on to " + pass.grit().label() + ", or it drinks finish and darkens."));
  }

  private void grainRaising(GrainRaising raising) {
    discs.count(raising.knockOff());
    notes.add(
        Message.of(
            "Wet the bare wood last and wipe off what stands; once dry, the whiskers come off with "
                + raising.knockOff().grit().label()
                + "."));
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

  private static List<WorkingLine> named(String names, List<WorkingLine> lines) {
    List<WorkingLine> named = new ArrayList<>();
    for (WorkingLine line : lines) {
      named.add(line.named(names + ": " + line.result().name()));
    }
    return named;
  }

  /** The paper that the finishes over and under the one the wood is sanded for take. */
  private void otherCoats(SandedGroup group) {
    Materials materials = request.materials();
    for (int i = 0; i < materials.layers().size(); i++) {
      if (i != materials.baseIndex()) {
        Sanding.plan(sanding(group, i))
            .fold(
                given -> given.value().extras().betweenCoats(), r -> Optional.<BetweenCoats>empty())
            .ifPresent(scuff -> discs.countBetweenCoats(scuff.each(), scuff.times()));
      }
    }
  }

  private SandingRequest sanding(SandedGroup group) {
    return sanding(group, request.materials().baseIndex());
  }

  private SandingRequest sanding(SandedGroup group, int at) {
    Layer layer = request.materials().layers().get(at);
    Finish finish = layer.finish();
    int scuffs = over.scuffsBelow(request.materials().layers(), at) ? 1 : 0;
    boolean sanded = finish.sandedBetweenCoats() || scuffs > 0;
    return new SandingRequest(
        group.surface(),
        Materials.sandingWood(request.materials().wood()),
        group.area(),
        new SurfaceWanted(
            finish.use().finalGrade(),
            FinishLook.of(finish.role(), request.materials().face().coats().sheen()),
            sanded ? Optional.of(finish.use().betweenCoatGrade()) : Optional.empty(),
            finish.sandedBetweenCoats() ? layer.coats().coats() + scuffs : 1 + scuffs,
            request.materials().layers().get(0).finish().use().raisesGrain(),
            false),
        request.shop().sanding());
  }

  /** What sanding between coats adds is told where it is done, not at the bare wood. */
  private static List<Caution> own(StartSurface start, List<Caution> all) {
    if (start instanceof StartSurface.OldFilm) {
      return all;
    }
    List<Caution> bare = new ArrayList<>();
    for (Caution caution : all) {
      if (!caution.code().equals(ShopRows.FINISH_DUST_FIRE.code())) {
        bare.add(caution);
      }
    }
    return bare;
  }
}
