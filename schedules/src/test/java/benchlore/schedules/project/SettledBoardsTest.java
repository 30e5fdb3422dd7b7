package benchlore.schedules.project;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.QuantityKey;
import benchlore.schedules.answer.WorkingLine;
import benchlore.schedules.movement.SteadyAir;
import benchlore.schedules.quantity.Figure;
import benchlore.schedules.room.Climate;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Boards are glued and fitted at what they have settled to by then. */
class SettledBoardsTest {
  private static final int TRIED = 100;
  private static final double AIR = new SteadyAir(20, 50).moisturePercent();

  @Test
  void boardsThatSettleInThePlanAreFittedWithinAPointOfTheShopsAir() {
    Random dice = new Random(20261201);
    for (int i = 0; i < TRIED; i++) {
      double metered = 4 + 14 * dice.nextDouble();
      double fitted = moistureAsFitted(plan(MadeParts.leaf(dice, Moves.FIXED), false, metered));
      assertTrue(Math.abs(fitted - AIR) <= 1 + 1e-9, metered + " settles to " + fitted);
      assertTrue((metered - AIR) * (fitted - AIR) >= 0, "it goes no farther than it has to");
    }
  }

  @Test
  void boardsThatHaveSettledAreFittedAtWhatTheMeterSays() {
    Random dice = new Random(5);
    for (int i = 0; i < TRIED; i++) {
      double metered = 4 + 14 * dice.nextDouble();
      assertEquals(
          metered, moistureAsFitted(plan(MadeParts.leaf(dice, Moves.FIXED), true, metered)), 0);
    }
  }

  @Test
  void nobodyIsToldToLetBoardsSettleThatHave() {
    Random dice = new Random(9);
    for (int i = 0; i < TRIED; i++) {
      double metered = 4 + 14 * dice.nextDouble();
      for (boolean settled : List.of(true, false)) {
        Step fit = fit(plan(MadeParts.leaf(dice, Moves.HINGED), settled, metered));
        boolean told = fit.cautions().stream().anyMatch(c -> c.code().equals("let-wood-settle"));
        boolean strange = settled && Math.abs(metered - AIR) > 3;
        assertEquals(strange, told, settled + " " + metered);
      }
    }
  }

  @Test
  void theSettleStepSaysWhatTheySettleTo() {
    Step settle = plan(Projects.part("top", 1, 4), false, 14).find("settle").orElseThrow();
    double told = settle.notes().get(1).quantities().get(0).value();
    assertEquals(AIR + 1, told, 1e-9);
  }

  private static ProjectPlan plan(Part part, boolean settled, double moisturePercent) {
    ProjectRequest like = Projects.of(Projects.evenings(), Climate.steady(20, 50), 1);
    ProjectRequest of = MadeParts.in(like, List.of(part));
    return Project.plan(MadeParts.ofBoards(of, settled, moisturePercent))
        .fold(Answer.Given::value, refused -> fail(refused.reasons().toString()));
  }

  private static Step fit(ProjectPlan plan) {
    return plan.find("dry-fit").orElseThrow();
  }

  private static double moistureAsFitted(ProjectPlan plan) {
    for (WorkingLine line : fit(plan).working()) {
      if (line.key() == QuantityKey.SWELLING) {
        for (Figure input : line.inputs()) {
          if (input.name().equals("moisture as fitted")) {
            return input.quantity().value();
          }
        }
      }
    }
    return fail("no moisture");
  }
}
