package benchlore.schedules.project;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Message;
import benchlore.schedules.answer.QuantityKey;
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

  private static Step fit(Part part) {
    return Project.plan(MadeParts.in(USUAL, List.of(part)))
        .fold(Answer.Given::value, refused -> fail(refused.reasons().toString()))
        .find("dry-fit")
        .orElseThrow();
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
    CoatChoice coats = USUAL.coats();
    double solids = USUAL.materials().finish().liquid().solidsByVolume().high();
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
