package benchlore.schedules.project;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Message;
import benchlore.schedules.answer.QuantityKey;
import benchlore.schedules.answer.StepId;
import benchlore.schedules.answer.WorkingLine;
import benchlore.schedules.material.Species;
import benchlore.schedules.movement.Film;
import benchlore.schedules.movement.Fit;
import benchlore.schedules.movement.FitRequest;
import benchlore.schedules.movement.FitSchedule;
import benchlore.schedules.movement.Opening;
import benchlore.schedules.movement.SteadyAir;
import benchlore.schedules.movement.Tape;
import benchlore.schedules.quantity.Unit;
import benchlore.schedules.room.Climate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** A fit in a plan and the fit planner give one answer to one question. */
class FitStepsTest {
  private static final int TRIED = 200;
  private static final ProjectRequest USUAL =
      Projects.of(Projects.evenings(), Climate.steady(20, 50), 1);

  @Test
  void thePlansGapIsTheFitPlannersGap() {
    Random dice = new Random(20261201);
    for (int i = 0; i < TRIED; i++) {
      Part part = MadeParts.leaf(dice, i % 2 == 0 ? Moves.HINGED : Moves.SLIDING);
      Step fit = fit(part);
      FitSchedule.Clearance wanted = planner(part).clearance().orElseThrow();
      double gap = line(fit, QuantityKey.GAP_ON_EACH_MOVING_SIDE);
      assertEquals(wanted.gapMetre(), gap, 0, part.toString());
      Message note = note(fit, part).orElseThrow();
      assertEquals(gap, note.quantities().get(0).value(), 0, note.toString());
    }
  }

  @Test
  void aDoorTakesAllItsGrowthAtTheLatchAndADrawerHalfOnEachSide() {
    Random dice = new Random(7);
    for (int i = 0; i < TRIED; i++) {
      Part door = MadeParts.leaf(dice, Moves.HINGED);
      Part drawer = MadeParts.as(door, Moves.SLIDING);
      double swells = planner(door).movement().swellMetre();
      double hinged = line(fit(door), QuantityKey.GAP_ON_EACH_MOVING_SIDE);
      double sliding = line(fit(drawer), QuantityKey.GAP_ON_EACH_MOVING_SIDE);
      assertEquals(0.5 * swells, hinged - sliding, 1e-12, door.toString());
      assertTrue(note(fit(door), door).orElseThrow().pattern().contains("at the latch side"));
      assertTrue(note(fit(drawer), drawer).orElseThrow().pattern().contains("on each side"));
    }
  }

  @Test
  void aFixedPartHasNoGapAndTellsAMovementThatCanBeSeen() {
    Random dice = new Random(11);
    int told = 0;
    for (int i = 0; i < TRIED; i++) {
      Part part = MadeParts.leaf(dice, Moves.FIXED);
      Step fit = fit(part);
      assertTrue(
          fit.working().stream().noneMatch(l -> l.key() == QuantityKey.GAP_ON_EACH_MOVING_SIDE));
      FitSchedule.Travel travel = planner(part).movement();
      boolean seen = travel.swellMetre() >= 0.0005 || travel.shrinkMetre() >= 0.0005;
      assertEquals(seen, note(fit, part).isPresent(), travel.toString());
      told += seen ? 1 : 0;
      note(fit, part)
          .ifPresent(n -> n.quantities().forEach(q -> assertTrue(q.value() >= 0.0005, n + "")));
    }
    assertTrue(told > 0 && told < TRIED, "told of " + told);
  }

  @Test
  void aWideGapIsSetWithADrillAndANarrowOneWithTape() {
    Random dice = new Random(13);
    int wide = 0;
    for (int i = 0; i < TRIED; i++) {
      Part part = MadeParts.leaf(dice, Moves.HINGED);
      Message note = note(fit(part), part).orElseThrow();
      boolean isWide = note.quantities().get(0).value() > 0.0015;
      assertEquals(isWide, note.pattern().contains("drill bit"), note.toString());
      assertFalse(isWide && note.pattern().contains("card"), note.toString());
      wide += isWide ? 1 : 0;
    }
    assertTrue(wide > 0 && wide < TRIED, "wide: " + wide);
  }

  /** A plane stroke at a fit costs nothing yet, and nothing is coated that was not fitted. */
  @Test
  void theFitComesBeforeSandingAndTheGapsOfMovingPartsAreCheckedAfter() {
    Random dice = new Random(17);
    for (int i = 0; i < TRIED; i++) {
      Moves moves = List.of(Moves.HINGED, Moves.SLIDING, Moves.FIXED).get(i % 3);
      ProjectPlan plan = plan(List.of(MadeParts.leaf(dice, moves)));
      Step fit = plan.find("dry-fit").orElseThrow();
      Step sand = plan.find("sand").orElseThrow();
      assertFalse(fit.start().isBefore(plan.find("machine").orElseThrow().end()));
      assertFalse(sand.start().isBefore(fit.end()));
      Optional<Step> check = plan.find("fit-check");
      assertEquals(moves != Moves.FIXED, check.isPresent());
      check.ifPresent(c -> assertFalse(c.start().isBefore(sand.end())));
      check.ifPresent(
          c -> assertFalse(plan.find("coat-1").orElseThrow().start().isBefore(c.end())));
    }
  }

  /** A run saved when plans sanded first stays as it was done. */
  @Test
  void whatWasSandedBeforeItWasFittedIsFittedAfterwards() {
    ProjectPlan plan = plan(List.of(Projects.part("panel", 1, 1)));
    Step sand = plan.find("sand").orElseThrow();
    Progress.Done done = new Progress.Done(sand.id(), sand.slots());
    Progress.Done machined =
        new Progress.Done(StepId.Task.MACHINE.once(), plan.find("machine").orElseThrow().slots());
    Progress progress = new Progress(Optional.of(sand.end()), List.of(machined, done));
    ProjectPlan after =
        plan(MadeParts.in(USUAL, List.of(Projects.part("panel", 1, 1))).with(progress));
    Step fit = after.find("dry-fit").orElseThrow();
    assertEquals(sand.slots(), after.find("sand").orElseThrow().slots());
    assertFalse(fit.start().isBefore(sand.end()));
    assertEquals("Dry fit, before the first coat", fit.title());
    assertTrue(after.find("fit-check").isEmpty());
    assertTrue(
        after.find("sand").orElseThrow().cautions().stream()
            .noneMatch(c -> c.code().equals("done-early")));
  }

  @Test
  void aHundredSlatsTakeMinutesEachAndADoorHalfAnHour() {
    Part slat = MadeParts.sized("slat", 100, 0.2, 0.08, Moves.FIXED);
    Part knob = MadeParts.sized("knob", 12, 0.03, 0.03, Moves.FIXED);
    Part door = MadeParts.sized("door", 1, 0.6, 0.4, Moves.HINGED);
    Part top = MadeParts.sized("top", 1, 1.8, 0.9, Moves.FIXED);
    assertEquals(100 * 60, FitTime.dryFitSecond(List.of(slat)), 0);
    assertEquals(100 * 120, FitTime.installSecond(List.of(slat)), 0);
    assertEquals(12 * 60, FitTime.dryFitSecond(List.of(knob)), 0);
    assertEquals(1_800, FitTime.installSecond(List.of(door)), 0);
    assertTrue(FitTime.dryFitSecond(List.of(top)) < FitTime.dryFitSecond(List.of(door)));
    assertEquals(0, FitTime.checkSecond(List.of(slat, knob, top)), 0);
  }

  private static Step fit(Part part) {
    return plan(List.of(part)).find("dry-fit").orElseThrow();
  }

  private static ProjectPlan plan(List<Part> parts) {
    return plan(MadeParts.in(USUAL, parts));
  }

  private static ProjectPlan plan(ProjectRequest request) {
    return Project.plan(request)
        .fold(Answer.Given::value, refused -> fail(refused.reasons().toString()));
  }

  private static Optional<Message> note(Step fit, Part part) {
    return fit.notes().stream().filter(n -> n.pattern().startsWith(part.name() + ":")).findFirst();
  }

  private static double line(Step fit, QuantityKey key) {
    List<Double> values = new ArrayList<>();
    for (WorkingLine line : fit.working()) {
      if (line.key() == key) {
        assertEquals(Unit.METRE, line.result().quantity().unit());
        values.add(line.result().quantity().value());
      }
    }
    assertEquals(1, values.size());
    return values.get(0);
  }

  /** The same question as the page of the fit planner asks it. */
  private static FitSchedule planner(Part part) {
    Species wood = USUAL.materials().wood();
    CoatChoice coats = USUAL.materials().layers().get(0).coats();
    double solids = USUAL.materials().layers().get(0).finish().liquid().solidsByVolume().high();
    Film film = new Film(coats.coats(), coats.wetFilmMicron(), solids);
    FitRequest question =
        new FitRequest(
            wood,
            part.rings(),
            part.widthMetre(),
            part.thicknessMetre(),
            USUAL.moisturePercent(),
            new SteadyAir(20, 50),
            USUAL.place(),
            Optional.empty(),
            Optional.empty());
    FitRequest asked =
        part.moves()
            .hanging()
            .map(h -> question.withOpening(new Opening(film, film, 0.0005, h, Tape.common())))
            .orElse(question);
    return Fit.plan(asked).fold(Answer.Given::value, refused -> fail(refused.reasons() + ""));
  }
}
