package benchlore.schedules.project;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.StepId;
import benchlore.schedules.coating.CoatingSchedule;
import benchlore.schedules.coating.DryingTimes;
import benchlore.schedules.coating.Stage;
import benchlore.schedules.room.Climate;
import benchlore.schedules.room.DailySwing;
import benchlore.schedules.room.DailySwing.Night;
import benchlore.schedules.time.Date;
import benchlore.schedules.time.Moment;
import benchlore.schedules.time.ShopWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** One night that was colder: every wait that passes through it is longer, and nothing else. */
class ColdNightTest {
  private static final DailySwing ROOM = new DailySwing(17, 21, 50, Optional.empty());
  private static final ProjectRequest USUAL = project(ROOM.climate(List.of()));

  @Test
  void theUsualNightGivesTheUsualPlan() {
    ProjectPlan plan = plan(USUAL);
    for (Date date : dates(plan)) {
      assertEquals(plan, plan(project(night(date, 17))), date.toString());
    }
  }

  @Test
  void aNightAfterAllIsCuredChangesNothing() {
    ProjectPlan plan = plan(USUAL);
    Date after = plan.end().date().plusDays(1);
    assertEquals(times(plan), times(plan(project(night(after, 2)))));
  }

  @Test
  void aNightBeforeTheStartChangesNothing() {
    ProjectPlan plan = plan(USUAL);
    Date before = plan.start().date().plusDays(-2);
    assertEquals(plan, plan(project(night(before, 2))));
  }

  @Test
  void aColderNightNeverEndsThePlanEarlierAndOftenLater() {
    ProjectPlan plan = plan(USUAL);
    int later = 0;
    for (Date date : dates(plan)) {
      ProjectPlan cold = plan(project(night(date, 11)));
      assertFalse(cold.end().isBefore(plan.end()), date.toString());
      // The plan's end is told by the day, the film's by the second.
      Moment cured = plan.coats().moment(Stage.FULL_CURE).orElseThrow();
      later = cold.coats().moment(Stage.FULL_CURE).orElseThrow().isAfter(cured) ? later + 1 : later;
    }
    assertTrue(later > 20, later + " nights move the end");
  }

  @Test
  void theCoatOfThatEveningWaitsLongerAndTheOneBeforeDoesNot() {
    Progress progress = until("coat-2");
    ProjectPlan usual = plan(USUAL.with(progress));
    Date evening = usual.find("coat-2").orElseThrow().start().date();
    ProjectPlan cold = plan(project(night(evening, 11)).with(progress));
    for (Stage stage : List.of(Stage.RECOAT_OPENS, Stage.FULL_CURE)) {
      assertTrue(
          moment(cold.coats(), 1, stage).isAfter(moment(usual.coats(), 1, stage)), stage.words());
    }
    assertEquals(
        moment(usual.coats(), 0, Stage.RECOAT_OPENS), moment(cold.coats(), 0, Stage.RECOAT_OPENS));
    Moment window = cold.find("coat-3").orElseThrow().window().orElseThrow().opens();
    assertEquals(moment(cold.coats(), 1, Stage.RECOAT_OPENS).upToQuarterHour(), window);
  }

  @Test
  void aColdNightInTheWetHoursIsToldAtItsCoat() {
    Progress progress = until("coat-2");
    Date evening = plan(USUAL).find("coat-2").orElseThrow().start().date();
    List<String> before = codes(plan(USUAL.with(progress)), "coat-2");
    List<String> after = codes(plan(project(night(evening, 2)).with(progress)), "coat-2");
    assertTrue(after.containsAll(before), before + " " + after);
    assertTrue(after.size() > before.size(), after.toString());
  }

  @Test
  void theJointGluedThatEveningIsReadyLater() {
    String last = lastGlueUp(plan(USUAL));
    Progress progress = until(last);
    ProjectPlan usual = plan(USUAL.with(progress));
    Date evening = usual.find(last).orElseThrow().start().date();
    ProjectPlan cold = plan(project(night(evening, 7)).with(progress));
    assertTrue(
        settled(cold).isAfter(settled(usual)), settled(cold) + " is not after " + settled(usual));
    ProjectPlan after = plan(project(night(evening.plusDays(-2), 7)).with(progress));
    assertEquals(settled(usual), settled(after));
  }

  /** The work up to a step done as planned, the rest from its end on. */
  private static Progress until(String id) {
    ProjectPlan plan = plan(USUAL);
    Step last = plan.find(id).orElseThrow();
    List<Progress.Done> done = new ArrayList<>();
    for (Step step : plan.steps()) {
      if (step.kind() == Step.Kind.WORK && !step.start().isAfter(last.start())) {
        done.add(new Progress.Done(step.id(), step.slots()));
      }
    }
    return new Progress(Optional.of(last.end()), done);
  }

  /** The last of them settles last. */
  private static String lastGlueUp(ProjectPlan plan) {
    String last = "";
    for (Step step : plan.steps()) {
      last = step.id().is(StepId.Task.GLUE) ? step.id().name() : last;
    }
    return last;
  }

  /** When the last wait before machining is over. */
  private static Moment settled(ProjectPlan plan) {
    Moment last = plan.start();
    Moment machine = plan.find("machine").orElseThrow().start();
    for (Step step : plan.steps()) {
      if (step.kind() == Step.Kind.WAIT && !step.end().isAfter(machine)) {
        last = step.end().isAfter(last) ? step.end() : last;
      }
    }
    return last;
  }

  private static Moment moment(CoatingSchedule coats, int coat, Stage stage) {
    DryingTimes drying = coats.coats().get(coat).drying();
    return drying.moment(stage).orElseThrow();
  }

  private static List<String> codes(ProjectPlan plan, String step) {
    return plan.find(step).orElseThrow().cautions().stream().map(Caution::code).toList();
  }

  private static List<Date> dates(ProjectPlan plan) {
    Date first = plan.start().date();
    int days = first.daysUntil(plan.end().date());
    return IntStream.range(0, days).mapToObj(first::plusDays).toList();
  }

  private static List<String> times(ProjectPlan plan) {
    return plan.steps().stream().map(step -> step.id() + " " + step.slots()).toList();
  }

  private static Climate night(Date date, double low) {
    return ROOM.climate(List.of(new Night(date, low, 21, OptionalDouble.empty(), true)));
  }

  private static ProjectRequest project(Climate climate) {
    ShopWeek week = Projects.evenings();
    return Projects.of(week, climate, 4);
  }

  private static ProjectPlan plan(ProjectRequest request) {
    return Project.plan(request)
        .fold(Answer.Given::value, refused -> fail(refused.reasons().toString()));
  }
}
