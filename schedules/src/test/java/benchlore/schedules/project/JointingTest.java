package benchlore.schedules.project;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.StepId;
import benchlore.schedules.room.Climate;
import benchlore.schedules.time.Interval;
import benchlore.schedules.time.Moment;
import benchlore.schedules.time.ShopWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Edges are jointed in the session they are glued in, where an evening holds both. */
class JointingTest {
  private static final int TRIED = 60;
  private static final double JOINT_SECOND = 900;

  private static ProjectRequest evenings(int minutes) {
    ShopWeek.Span evening = new ShopWeek.Span(18 * 60, 18 * 60 + minutes);
    List<List<ShopWeek.Span>> days = new ArrayList<>();
    for (int day = 0; day < 7; day++) {
      days.add(List.of(evening));
    }
    ShopWeek week = new ShopWeek(days, List.of());
    return Projects.of(week, Climate.steady(20, 50), 1);
  }

  @Test
  void eachBlankIsJointedAndGluedInOneSession() {
    Random dice = new Random(20261201);
    for (int i = 0; i < TRIED; i++) {
      int boards = 2 + dice.nextInt(4);
      Part blank = MadeParts.blank(dice, 1 + dice.nextInt(3), boards);
      ProjectPlan plan = plan(MadeParts.in(evenings(180), List.of(blank)));
      assertTrue(plan.find("dry-clamp").isEmpty());
      for (Step glue : glueUps(plan)) {
        assertTrue(glue.title().startsWith("Joint and glue up"), glue.title());
        assertTrue(
            glue.notes().get(0).pattern().matches("(Joint each edge|Edges, dry clamping).*"));
        for (Interval session : glue.slots()) {
          assertTrue(session.seconds() >= JOINT_SECOND * (boards - 1), session.toString());
        }
        assertFalse(codes(glue).contains("stale-surface"), glue.toString());
        assertTrue(codes(glue).contains("rotating-cutter"));
      }
    }
  }

  @Test
  void anEveningTooShortForBothJointsBeforeAndStillTakesAFreshPass() {
    ProjectPlan plan = plan(MadeParts.in(evenings(60), List.of(Projects.part("top", 1, 5))));
    Step joint = plan.find("dry-clamp").orElseThrow();
    Step glue = plan.find("glue-1").orElseThrow();
    assertFalse(glue.start().isBefore(joint.end()));
    assertTrue(glue.notes().get(0).pattern().contains("one fine pass over every edge"));
    assertFalse(codes(glue).contains("stale-surface"));
  }

  /** A run saved when all edges were jointed first goes on from there. */
  @Test
  void edgesThatWereAllJointedFirstAreNotJointedAgain() {
    ProjectRequest project = MadeParts.in(evenings(180), List.of(Projects.part("top", 2, 4)));
    Moment at = project.start();
    Interval slot = new Interval(at, at.plusMinutes(90));
    ProjectPlan plan =
        plan(
            project.with(
                new Progress(
                    Optional.of(slot.end()),
                    List.of(new Progress.Done(StepId.Task.DRY_CLAMP.once(), List.of(slot))))));
    assertEquals(List.of(slot), plan.find("dry-clamp").orElseThrow().slots());
    for (Step glue : glueUps(plan)) {
      assertTrue(glue.title().startsWith("Glue up"), glue.title());
      glue.slots().forEach(session -> assertTrue(session.seconds() < 45 * 60, session.toString()));
    }
  }

  /** No clamps on the shelf: a plan without joints needs none, one with edges says what to do. */
  @Test
  void aShopWithoutClampsIsRefusedOnlyWhereAClampIsNeeded() {
    ProjectRequest one = MadeParts.in(evenings(180), List.of(Projects.part("shelf", 2, 1)));
    assertTrue(plan(MadeParts.withClamps(one, 0)).find("glue-1").isEmpty());
    ProjectRequest glued = MadeParts.in(evenings(180), List.of(Projects.part("top", 1, 3)));
    List<String> inputs =
        Project.plan(MadeParts.withClamps(glued, 0))
            .fold(
                given -> List.of(),
                refused -> refused.reasons().stream().map(reason -> reason.input()).toList());
    assertEquals(List.of("clamps.count"), inputs);
  }

  private static List<Step> glueUps(ProjectPlan plan) {
    List<Step> found = plan.steps().stream().filter(s -> s.id().is(StepId.Task.GLUE)).toList();
    assertFalse(found.isEmpty());
    return found;
  }

  private static List<String> codes(Step step) {
    return step.cautions().stream().map(caution -> caution.code()).toList();
  }

  private static ProjectPlan plan(ProjectRequest request) {
    return Project.plan(request)
        .fold(Answer.Given::value, refused -> fail(refused.reasons().toString()));
  }
}
