package benchlore.schedules.project;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Caution;
import benchlore.schedules.material.Adhesive;
import benchlore.schedules.room.Climate;
import benchlore.schedules.time.Interval;
import benchlore.schedules.time.Moment;
import benchlore.schedules.time.ShopWeek;
import benchlore.schedules.time.Weekday;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ProjectTest {
  private static final Climate HEATED = Climate.swing(17, 21, 50);

  private static ProjectPlan plan(ProjectRequest request) {
    Answer<ProjectPlan> answer = Project.plan(request);
    if (answer instanceof Answer.Refused<ProjectPlan> refused) {
      throw new AssertionError(refused.reasons().toString());
    }
    return ((Answer.Given<ProjectPlan>) answer).value();
  }

  private static List<String> refused(ProjectRequest request) {
    return Project.plan(request)
        .fold(
            given -> List.of(),
            refused -> refused.reasons().stream().map(reason -> reason.input()).toList());
  }

  private static final ProjectPlan PLAN = plan(Projects.of(Projects.evenings(), HEATED, 2));

  private static Step step(String id) {
    return PLAN.find(id).orElseThrow(() -> new AssertionError(id));
  }

  @Test
  void stepsStandInTheOrderOfTheTrade() {
    List<String> ids = PLAN.steps().stream().map(step -> step.id().name()).toList();
    List<String> wanted =
        List.of(
            "glue-1",
            "clamps-off-1",
            "machine",
            "dry-fit",
            "sand",
            "fit-check",
            "coat-1",
            "coat-2",
            "coat-3",
            "install");
    int at = -1;
    for (String id : wanted) {
      assertTrue(ids.indexOf(id) > at, id + " in " + ids);
      at = ids.indexOf(id);
    }
  }

  @Test
  void nobodyDoesTwoThingsAtOnceAndOnlyInShopHours() {
    List<Interval> work = new ArrayList<>();
    for (Step step : PLAN.steps()) {
      if (step.kind() == Step.Kind.WORK) {
        work.addAll(step.slots());
      }
    }
    work.sort((a, b) -> a.start().compareTo(b.start()));
    for (int i = 0; i < work.size(); i++) {
      Interval slot = work.get(i);
      assertTrue(Projects.evenings().open(slot.start()), slot.toString());
      assertTrue(Projects.evenings().open(slot.end().plusSeconds(-1)), slot.toString());
      if (i > 0) {
        assertFalse(slot.start().isBefore(work.get(i - 1).end()), work.get(i - 1) + " " + slot);
      }
    }
  }

  @Test
  void clampsStayOnUntilTheyMayComeOff() {
    Moment off = step("clamps-off-1").window().orElseThrow().opens();
    assertFalse(step("clamps-off-1").start().isBefore(off));
  }

  @Test
  void coatsGoOnOnceTheWindowIsOpenAndAreDenibbedBefore() {
    for (int i = 2; i <= 3; i++) {
      Step coat = step("coat-" + i);
      Step.Window window = coat.window().orElseThrow();
      assertFalse(coat.start().isBefore(window.opens()));
      assertEquals(coat.start(), PLAN.find("scuff-" + i).orElseThrow().end());
    }
  }

  @Test
  void missedWindowPutsInTheScuff() {
    ShopWeek saturdays =
        ShopWeek.of(
            Map.of(Weekday.SATURDAY, List.of(new ShopWeek.Span(8 * 60, 18 * 60))), List.of());
    ProjectPlan plan = plan(Projects.of(saturdays, HEATED, 1));
    Step scuff = plan.find("scuff-2").orElseThrow();
    Step coat = plan.find("coat-2").orElseThrow();
    // A coat scuffed because its window has closed is not told to start before a deadline gone by.
    assertTrue(coat.window().orElseThrow().closes().isEmpty());
    List<String> codes = coat.cautions().stream().map(Caution::code).toList();
    assertTrue(codes.contains("recoat-window-missed"), codes.toString());
    assertEquals(coat.start(), scuff.end());
  }

  @Test
  void cautionsStandAtTheirSteps() {
    List<String> coat = step("coat-1").cautions().stream().map(Caution::code).toList();
    assertTrue(coat.contains("oily-rags"), coat.toString());
    assertTrue(coat.contains("near-wet-film"), coat.toString());
    List<String> sand = step("sand").cautions().stream().map(Caution::code).toList();
    assertTrue(sand.contains("wood-dust"), sand.toString());
    assertEquals("rotating-cutter", step("machine").cautions().get(0).code());
    long rags = coat.stream().filter("oily-rags"::equals).count();
    assertEquals(1, rags);
  }

  /** The sequence tells the same words once; the plan has to tell them at every coat. */
  @Test
  void everyCoatWithDewAfterItIsTouchDrySaysSo() {
    ProjectPlan cold = plan(Projects.of(Projects.evenings(), Climate.swing(6, 18, 50), 1));
    for (int i = 1; i <= 3; i++) {
      Step coat = cold.find("coat-" + i).orElseThrow();
      List<String> codes = coat.cautions().stream().map(Caution::code).toList();
      assertTrue(codes.contains("dew-while-wet"), "coat " + i + ": " + codes);
      assertTrue(codes.contains("oily-rags"), "coat " + i + ": " + codes);
    }
  }

  @Test
  void coatAfterItsWindowCarriesTheCaution() {
    ShopWeek saturdays =
        ShopWeek.of(
            Map.of(Weekday.SATURDAY, List.of(new ShopWeek.Span(8 * 60, 18 * 60))), List.of());
    Step coat = plan(Projects.of(saturdays, HEATED, 1)).find("coat-2").orElseThrow();
    List<String> codes = coat.cautions().stream().map(Caution::code).toList();
    assertTrue(codes.contains("recoat-window-missed"), codes.toString());
  }

  @Test
  void lastCoatIsTheSheenWanted() {
    assertEquals("Coat 1 of 3 (gloss)", step("coat-1").title());
    assertEquals("Coat 3 of 3 (satin)", step("coat-3").title());
  }

  @Test
  void sameRequestSamePlan() {
    assertEquals(PLAN, plan(Projects.of(Projects.evenings(), HEATED, 2)));
  }

  /** The end itself may come minutes earlier: an hour later start can save a scuffing. */
  @Test
  void morePanelsAreMoreWork() {
    double work = 0;
    for (int panels = 1; panels <= 4; panels++) {
      ProjectPlan plan = plan(Projects.of(Projects.evenings(), HEATED, panels));
      assertTrue(plan.workSeconds() > work);
      work = plan.workSeconds();
    }
  }

  @Test
  void shopWithoutHoursIsRefused() {
    List<String> inputs = refused(Projects.of(ShopWeek.of(Map.of(), List.of()), HEATED, 1));
    assertEquals(List.of("shop.week"), inputs);
  }

  @Test
  void shopTooColdForTheGlueIsRefusedWithTheReason() {
    List<String> inputs = refused(Projects.of(Projects.evenings(), Climate.steady(2, 60), 1));
    assertTrue(inputs.contains("climate"), inputs.toString());
  }

  @Test
  void nonsenseFiguresAreAllTold() {
    ProjectRequest fine = Projects.of(Projects.evenings(), HEATED, 1);
    Part bad = Projects.part("panel", 0, 99);
    ProjectRequest request =
        new ProjectRequest(
            fine.start(),
            List.of(bad),
            fine.materials(),
            fine.shop(),
            fine.place(),
            true,
            Double.NaN);
    assertTrue(
        refused(request).containsAll(List.of("moisturePercent", "part.count", "part.boards")));
  }

  @Test
  void boardsThatHaveNotSettledWaitFirst() {
    ProjectRequest fine = Projects.of(Projects.evenings(), HEATED, 1);
    ProjectRequest request =
        new ProjectRequest(
            fine.start(), fine.parts(), fine.materials(), fine.shop(), fine.place(), false, 14);
    Optional<Step> settle = plan(request).find("settle");
    assertTrue(settle.isPresent());
    assertEquals(Step.Kind.WAIT, settle.get().kind());
    assertFalse(plan(request).find("glue-1").orElseThrow().start().isBefore(settle.get().end()));
  }

  @Test
  void anAdhesiveWithoutWaterSinksNoJoint() {
    ProjectRequest usual = Projects.of(Projects.evenings(), HEATED, 1);
    String swells = plan(usual).find("wait-joints").orElseThrow().notes().get(0).pattern();
    assertTrue(swells.contains("swells"), swells);
    Materials made = usual.materials();
    Adhesive yellow = made.adhesive();
    Adhesive dry =
        new Adhesive(
            yellow.family(),
            Adhesive.Setting.REACTION,
            false,
            yellow.times(),
            yellow.air(),
            yellow.line(),
            yellow.bond(),
            yellow.spreading());
    ProjectRequest request =
        new ProjectRequest(
            usual.start(),
            usual.parts(),
            Materials.of(made.wood(), dry, made.top()),
            usual.shop(),
            usual.place(),
            usual.settled(),
            usual.moisturePercent());
    Step wait = plan(request).find("wait-joints").orElseThrow();
    assertFalse(wait.notes().get(0).pattern().contains("swells"));
    double days = wait.start().secondsUntil(wait.end()) / 86_400;
    assertTrue(days < 2, "waits " + days + " days without water to lose");
  }
}
