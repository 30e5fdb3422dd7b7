package benchlore.schedules.project;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.QuantityKey;
import benchlore.schedules.movement.RingAngle;
import benchlore.schedules.room.Climate;
import benchlore.schedules.sanding.StartSurface;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** A ball nose needs hours that no hand counts. */
class MachinePathTest {
  private static final int TRIED = 80;
  private static final double HOUR = 3_600;

  /** 2.84 square metres in lines 1.2 mm apart at 1500 mm a minute: 26 h by hand. */
  @Test
  void thePathIsAreaOverFeedAndStepover() {
    List<Part> parts =
        List.of(
            part("panel", 2, 0.88, 0.52, 0.0012, 5_400), part("door", 4, 0.42, 0.3, 0.0012, 2_400));
    assertEquals(26.3, new MachinePath(parts).seconds() / HOUR, 0.05);
  }

  @Test
  void aTimeFarBelowThePathIsToldOnceAndAnyOtherNot() {
    Random dice = new Random(20261201);
    int told = 0;
    for (int i = 0; i < TRIED; i++) {
      double stepover = 0.0005 + 0.003 * dice.nextDouble();
      double machining = 40_000 * dice.nextDouble();
      Part part = part("panel", 1 + dice.nextInt(3), 0.8, 0.4, stepover, machining);
      Step machine = machine(List.of(part, Projects.part("rail", 2, 1)));
      double path = 2 * 0.8 * 0.4 / (0.025 * stepover);
      List<String> notes = machine.notes().stream().map(n -> n.pattern()).toList();
      long said = notes.stream().filter(n -> n.contains("ball nose")).count();
      assertEquals(machining < 0.5 * path ? 1 : 0, said, machining + " of " + path);
      told += (int) said;
      assertEquals(
          1, machine.working().stream().filter(l -> l.key() == QuantityKey.MACHINE_TIME).count());
    }
    assertTrue(told > 0 && told < TRIED, "told of " + told);
  }

  @Test
  void aPlanersFaceHasNoPath() {
    Step machine = machine(List.of(Projects.part("rail", 2, 1)));
    assertTrue(machine.working().isEmpty());
    assertEquals(0, new MachinePath(List.of(Projects.part("rail", 2, 1))).seconds(), 0);
  }

  private static Part part(
      String name, int count, double length, double width, double stepover, double machining) {
    return new Part(
        name,
        count,
        length,
        width,
        0.018,
        RingAngle.FLAT,
        1,
        new StartSurface.BallNose(0.012, stepover),
        machining,
        Moves.FIXED);
  }

  private static Step machine(List<Part> parts) {
    ProjectRequest like = Projects.of(Projects.evenings(), Climate.steady(20, 50), 1);
    return Project.plan(MadeParts.in(like, parts))
        .fold(Answer.Given::value, refused -> fail(refused.reasons().toString()))
        .find("machine")
        .orElseThrow();
  }
}
