package benchlore.schedules.project;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.material.Sheen;
import benchlore.schedules.room.Climate;
import benchlore.schedules.time.Moment;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * Joints settle as long as the sheen would show that they have not, or as long as the shop says.
 */
class JointSettlingTest {
  private static final double DAY = 86_400;

  /** Tight within the hour; the wait is told to the day. */
  private static final double CLOSE_ENOUGH = 0.1;

  @Test
  void aGlossWaitsAWeekAndSatinFourDays() {
    Map<Sheen, Double> days = Map.of(Sheen.GLOSS, 7.0, Sheen.SATIN, 4.0);
    days.forEach(
        (sheen, wanted) -> {
          ProjectPlan plan = plan(project(sheen));
          assertEquals(wanted, waitDays(plan), CLOSE_ENOUGH, sheen.toString());
          boolean gloss = wanted == 7.0;
          Step glue = plan.find("glue-1").orElseThrow();
          assertEquals(
              gloss, glue.cautions().stream().anyMatch(c -> c.code().equals("sunken-joint")));
          assertEquals(gloss, wait(plan).working().isEmpty());
        });
  }

  @Test
  void mattSettlesShortestAndSemiGlossAsGloss() {
    assertEquals(JointSettling.MATT, JointSettling.of(project(Sheen.MATT)));
    assertEquals(JointSettling.GLOSSY, JointSettling.of(project(Sheen.SEMI_GLOSS)));
    double share = JointSettling.MATT.working().get(0).result().quantity().value();
    assertEquals(3, 7 * share, 1e-9);
  }

  @Test
  void theShopsOwnWaitIsTaken() {
    for (double days : List.of(1.0, 2.0, 5.0, 12.0)) {
      ProjectPlan plan = plan(MadeParts.settlingFor(project(Sheen.GLOSS), days * DAY));
      assertEquals(days, waitDays(plan), CLOSE_ENOUGH);
    }
  }

  /** However short the wait, a joint is never machined before its clamps are off. */
  @Test
  void noWaitIsShorterThanTheClamps() {
    ProjectPlan plan = plan(MadeParts.settlingFor(project(Sheen.GLOSS), 60));
    Moment machine = plan.find("machine").orElseThrow().start();
    assertFalse(machine.isBefore(plan.find("clamps-off-1").orElseThrow().end()));
  }

  @Test
  void theWaitOffersToRoughItOutAndSkimItLast() {
    for (Sheen sheen : List.of(Sheen.GLOSS, Sheen.SATIN)) {
      String words = wait(plan(project(sheen))).notes().get(0).pattern();
      assertTrue(words.contains("rough it out tomorrow and skim it last"), words);
    }
  }

  private static ProjectRequest project(Sheen sheen) {
    ProjectRequest like =
        Projects.of(
            Projects.evenings(),
            Climate.steady(20, 50),
            1,
            new Projects.Surface(false, false, sheen));
    return MadeParts.in(like, List.of(Projects.part("top", 1, 3)));
  }

  private static double waitDays(ProjectPlan plan) {
    Moment glued = plan.find("glue-1").orElseThrow().end();
    return glued.secondsUntil(wait(plan).end()) / DAY;
  }

  private static Step wait(ProjectPlan plan) {
    return plan.find("wait-joints").orElseThrow();
  }

  private static ProjectPlan plan(ProjectRequest request) {
    return Project.plan(request)
        .fold(Answer.Given::value, refused -> fail(refused.reasons().toString()));
  }
}
