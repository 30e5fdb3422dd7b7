package benchlore.schedules.project;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Caution;
import benchlore.schedules.material.Sheen;
import benchlore.schedules.room.Climate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the bare wood gets after its last grade, and the waits that belong to it. */
class SurfaceStepsTest {
  private static final Climate HEATED = Climate.swing(17, 21, 50);

  private static ProjectPlan plan(boolean openGrained, boolean raisesGrain, Sheen sheen) {
    Projects.Surface surface = new Projects.Surface(openGrained, raisesGrain, sheen);
    Answer<ProjectPlan> answer = Project.plan(Projects.of(Projects.evenings(), HEATED, 1, surface));
    return ((Answer.Given<ProjectPlan>) answer).value();
  }

  private static Step step(ProjectPlan plan, String id) {
    return plan.find(id).orElseThrow(() -> new AssertionError(id));
  }

  @Test
  void openGrainedWoodIsFilledOnlyWhereAFillerIsAskedFor() {
    ProjectPlan plan = plan(true, false, Sheen.GLOSS);
    assertTrue(plan.find("fill-pores").isEmpty());
    String notes = step(plan, "sand").notes() + "" + step(plan, "coat-1").notes();
    assertTrue(notes.contains("filler"), notes);
  }

  @Test
  void whateverIsSandedCarriesTheDust() {
    List<String> codes =
        step(plan(true, true, Sheen.GLOSS), "knock-off").cautions().stream()
            .map(Caution::code)
            .toList();
    assertTrue(codes.contains("wood-dust"), codes.toString());
  }

  @Test
  void closedGrainOrAnotherSheenIsNotFilled() {
    assertTrue(plan(false, false, Sheen.GLOSS).find("fill-pores").isEmpty());
    assertTrue(plan(true, false, Sheen.SATIN).find("fill-pores").isEmpty());
  }

  @Test
  void wettedWoodDriesBeforeItsWhiskersComeOff() {
    ProjectPlan plan = plan(false, true, Sheen.SATIN);
    Step dry = step(plan, "grain-dry");
    assertEquals(Step.Kind.WAIT, dry.kind());
    assertFalse(dry.start().isBefore(step(plan, "sand").end()));
    assertFalse(step(plan, "knock-off").start().isBefore(dry.end()));
    assertTrue(plan(false, false, Sheen.SATIN).find("grain-dry").isEmpty());
  }

  /** The steps are taken out of sanding, not added to it. */
  @Test
  void sandingTheBareWoodTakesAsLongWithAndWithoutThem() {
    double plain = step(plan(false, false, Sheen.GLOSS), "sand").workSeconds();
    assertEquals(plain, step(plan(true, false, Sheen.GLOSS), "sand").workSeconds());
  }
}
