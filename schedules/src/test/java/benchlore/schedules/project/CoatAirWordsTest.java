package benchlore.schedules.project;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.schedules.air.AirSchedule;
import benchlore.schedules.air.Respirator;
import benchlore.schedules.air.RoomAir;
import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Message;
import benchlore.schedules.answer.QuantityKey;
import benchlore.schedules.room.Climate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a plan's coats say of the air, from a close room to an open barn. */
class CoatAirWordsTest {
  private static Optional<ProjectPlan> plan(double changes) {
    ProjectRequest usual = Projects.of(Projects.evenings(), Climate.swing(17, 21, 50), 2);
    Shop shop = usual.shop();
    ProjectRequest request =
        new ProjectRequest(
            usual.start(),
            usual.parts(),
            usual.materials(),
            new Shop(
                shop.week(),
                shop.climate(),
                RoomAir.ofAirChanges(60, changes, 3, 19),
                shop.ignition(),
                shop.sanding(),
                shop.clamps(),
                shop.people()),
            usual.place(),
            usual.settled(),
            usual.moisturePercent());
    return Project.plan(request) instanceof Answer.Given<ProjectPlan> given
        ? Optional.of(given.value())
        : Optional.empty();
  }

  @ParameterizedTest
  @ValueSource(doubles = {8, 12, 20, 40, 100, 400, 2_000})
  void nobodyIsToldToComeBackBeforeTheCoatIsOn(double changes) {
    ProjectPlan plan = plan(changes).orElseThrow();
    AirSchedule.ReEntry back = plan.top().air().orElseThrow().reEntries().get(0);
    Step coat = plan.find("coat-1").orElseThrow();
    double work = coat.start().secondsUntil(coat.end());
    assertTrue(back.second().orElse(1e9) > work);
    List<String> told = coat.notes().stream().map(Message::pattern).toList();
    assertEquals(
        back.second().isPresent(), told.stream().anyMatch(t -> t.contains("fine to sit in again")));
    assertEquals(back.second().isEmpty(), told.contains(back.verdict().words()));
    assertEquals(
        back.second().isPresent(),
        coat.working().stream().anyMatch(line -> line.key() == QuantityKey.RE_ENTRY));
  }

  @ParameterizedTest
  @ValueSource(doubles = {8, 12, 20, 40, 100, 400, 2_000})
  void theMaskIsNamedWhereItsLimitsStand(double changes) {
    ProjectPlan plan = plan(changes).orElseThrow();
    Respirator mask = plan.top().air().orElseThrow().respirator().respirator();
    List<String> told =
        plan.find("coat-1").orElseThrow().notes().stream().map(Message::pattern).toList();
    boolean named = told.stream().anyMatch(t -> t.contains(mask.words()));
    assertEquals(mask != Respirator.NONE, named, told.toString());
    for (Step step : plan.steps()) {
      step.cautions()
          .forEach(
              c ->
                  assertFalse(
                      c.measure().pattern().contains("respirator named"), step.id().name()));
    }
  }
}
