package benchlore.schedules.answer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Steps are named as plan files have named them from the first. */
class StepIdTest {
  private static final Set<StepId.Task> NUMBERED =
      Set.of(StepId.Task.GLUE, StepId.Task.CLAMPS_OFF, StepId.Task.SCUFF, StepId.Task.COAT);

  @Test
  void everyNameIsReadBackAsItsStep() {
    for (StepId.Task task : StepId.Task.values()) {
      List<StepId> steps =
          NUMBERED.contains(task)
              ? List.of(task.number(1), task.number(12), task.number(9999))
              : List.of(task.once());
      for (StepId step : steps) {
        assertEquals(Optional.of(step), StepId.parse(step.name()), step.name());
      }
    }
  }

  @Test
  void namesInOldPlanFilesStayGood() {
    assertEquals(Optional.of(StepId.Task.COAT.number(2)), StepId.parse("coat-2"));
    assertEquals(Optional.of(StepId.Task.CLAMPS_OFF.number(1)), StepId.parse("clamps-off-1"));
    assertEquals(Optional.of(StepId.Task.DRY_FIT.once()), StepId.parse("dry-fit"));
    assertEquals("cure-before-rubbing", StepId.Task.CURE_BEFORE_RUBBING.once().name());
  }

  @Test
  void whatIsNoNameOfAStepIsNone() {
    for (String name : List.of("", "coat", "coat-", "coat-0", "coat-02", "coat-x", "sand-1")) {
      assertTrue(StepId.parse(name).isEmpty(), name);
    }
    assertTrue(StepId.parse("coat-12345").isEmpty());
    assertTrue(StepId.parse("glue-1 ").isEmpty());
  }

  @Test
  void aNumberThatDoesNotSuitTheTaskIsTheProgrammersFault() {
    assertThrows(IllegalArgumentException.class, StepId.Task.COAT::once);
    assertThrows(IllegalArgumentException.class, () -> StepId.Task.SAND.number(1));
  }
}
