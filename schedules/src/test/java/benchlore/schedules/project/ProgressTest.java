package benchlore.schedules.project;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.StepId;
import benchlore.schedules.coating.ScuffReason;
import benchlore.schedules.project.Progress.Done;
import benchlore.schedules.room.Climate;
import benchlore.schedules.time.Interval;
import benchlore.schedules.time.Moment;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What is done stays; what is not done follows from it and from now. */
class ProgressTest {
  private static final ProjectRequest PROJECT =
      Projects.of(Projects.evenings(), Climate.steady(20, 50), 4);

  @Test
  void everythingDoneAsPlannedGivesThePlanAgain() {
    ProjectPlan plan = plan(PROJECT);
    Progress done = new Progress(Optional.of(plan.end()), all(plan, plan.steps().size()));
    ProjectPlan again = plan(PROJECT.with(done));
    assertEquals(times(plan), times(again));
  }

  @Test
  void whatIsDoneInTimeMovesNothing() {
    ProjectPlan plan = plan(PROJECT);
    for (int n = 1; n < plan.steps().size(); n++) {
      Moment end = plan.steps().get(n - 1).end();
      if (underWay(plan, n, end)) {
        continue; // Another step begins before this one ends: late, if only this one is done.
      }
      Progress done = new Progress(Optional.of(end), all(plan, n));
      assertEquals(times(plan), times(plan(PROJECT.with(done))), "after " + n + " steps");
    }
  }

  @Test
  void aStepDoneLateMovesAllThatFollowsAndNothingBefore() {
    ProjectPlan plan = plan(PROJECT);
    int at = index(plan, "sand");
    List<Done> done = all(plan, at);
    Step sand = plan.steps().get(at);
    List<Interval> late = new ArrayList<>();
    for (Interval slot : sand.slots()) {
      late.add(new Interval(slot.start().plusDays(9), slot.end().plusDays(9)));
    }
    done.add(new Done(StepId.Task.SAND.once(), late));
    Moment end = late.get(late.size() - 1).end();
    ProjectPlan after = plan(PROJECT.with(new Progress(Optional.of(end), done)));
    for (int i = 0; i < at; i++) {
      assertEquals(plan.steps().get(i).slots(), after.steps().get(i).slots());
    }
    assertEquals(late, after.find("sand").orElseThrow().slots());
    assertFalse(after.find("fit-check").orElseThrow().start().isBefore(end));
    assertTrue(after.end().isAfter(plan.end()));
  }

  @Test
  void aCoatFarPastItsWindowIsScuffedFirst() {
    ProjectPlan plan = plan(PROJECT);
    int at = index(plan, "coat-1") + 1;
    Moment weeksLater = plan.steps().get(at - 1).end().plusDays(60);
    Progress done = new Progress(Optional.of(weeksLater), all(plan, at));
    ProjectPlan after = plan(PROJECT.with(done));
    assertFalse(after.find("coat-2").orElseThrow().start().isBefore(weeksLater));
    assertTrue(after.coats().coats().get(1).scuff() != ScuffReason.NONE);
    assertEquals(
        plan.find("coat-1").orElseThrow().slots(), after.find("coat-1").orElseThrow().slots());
  }

  /** Clamps off, machining and a coat before their time: each step says so; in time, none does. */
  @Test
  void whatWasDoneBeforeItsTimeSaysSo() {
    ProjectPlan plan = plan(PROJECT);
    for (String id : List.of("clamps-off-1", "machine", "coat-2")) {
      int at = index(plan, id);
      List<Done> done = all(plan, at);
      List<Interval> soon = new ArrayList<>();
      for (Interval slot : plan.steps().get(at).slots()) {
        soon.add(new Interval(slot.start().plusHours(-200), slot.end().plusHours(-200)));
      }
      done.add(new Done(StepId.parse(id).orElseThrow(), soon));
      Progress progress = new Progress(Optional.of(plan.steps().get(at).end()), done);
      Step step = plan(PROJECT.with(progress)).find(id).orElseThrow();
      String code = id.equals("coat-2") ? "done-early" : "joint-too-young";
      assertEquals(code, step.cautions().get(0).code(), id);
      assertTrue(
          plan.find(id).orElseThrow().cautions().stream().noneMatch(c -> c.code().equals(code)));
    }
  }

  @Test
  void nothingUndoneStartsBeforeNow() {
    ProjectPlan plan = plan(PROJECT);
    Moment now = plan.start().plusDays(30);
    for (Step step : plan(PROJECT.with(new Progress(Optional.of(now), List.of()))).steps()) {
      if (step.kind() == Step.Kind.WORK) {
        assertFalse(step.start().isBefore(now), step.id().name());
      }
    }
  }

  private static boolean underWay(ProjectPlan plan, int from, Moment end) {
    return plan.steps().subList(from, plan.steps().size()).stream()
        .anyMatch(step -> step.start().isBefore(end) && step.kind() == Step.Kind.WORK);
  }

  private static List<Done> all(ProjectPlan plan, int count) {
    List<Done> done = new ArrayList<>();
    for (Step step : plan.steps().subList(0, count)) {
      if (step.kind() == Step.Kind.WORK) {
        done.add(new Done(step.id(), step.slots()));
      }
    }
    return done;
  }

  private static int index(ProjectPlan plan, String id) {
    return plan.steps().indexOf(plan.find(id).orElseThrow());
  }

  private static List<String> times(ProjectPlan plan) {
    List<String> times = new ArrayList<>();
    for (Step step : plan.steps()) {
      times.add(step.id().name() + " " + step.slots());
    }
    return times;
  }

  private static ProjectPlan plan(ProjectRequest request) {
    return Project.plan(request)
        .fold(Answer.Given::value, refused -> fail(refused.reasons().toString()));
  }
}
