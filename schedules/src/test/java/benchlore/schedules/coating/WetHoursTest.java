package benchlore.schedules.coating;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Caution;
import benchlore.schedules.room.Climate;
import benchlore.schedules.time.Moment;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The air's limits while a coat is wet, as told of one that is on already: which hour, and what to
 * change. What may not go on at all is in {@link AirGateTest}.
 */
class WetHoursTest {
  private static final Moment DAY = Moment.of(2026, 5, 4, 0, 0);

  private static Answer<DryingTimes> coat(FinishMaker maker, Climate room, int hour) {
    return Coating.laid(
        new DryingRequest(maker.make(), maker.wetFilm, room, DAY.date().at(hour, 0)));
  }

  @Test
  void comfortableAirGivesNoCaution() {
    assertEquals(List.of(), Answers.codes(coat(FinishMaker.oil(), Climate.steady(20, 50), 9)));
  }

  @Test
  void aColdEveningIsCautionedWithItsHourAndABetterStart() {
    Climate shed = Climate.steady(6, 60).withHeating(9, 22, 18);
    Caution cold = Answers.caution(coat(FinishMaker.oil(), shed, 19), "cold-while-wet");
    assertEquals(Caution.Severity.WORK, cold.severity());
    assertTrue(cold.what().pattern().contains("21:50 that day"), cold.what().pattern());
    assertTrue(
        cold.measure().pattern().startsWith("Start at 10:00 the next day instead"),
        cold.measure().pattern());
    assertEquals(6, cold.what().quantities().get(0).value(), 1e-9);
    assertEquals(10, cold.what().quantities().get(1).value(), 1e-9);
  }

  @Test
  void aWarmStartAndAColdNightRestTheReaction() {
    Climate shed = Climate.steady(3, 60).withHeating(8, 20, 20);
    DryingTimes rests = Answers.value(coat(FinishMaker.epoxy(), shed, 9));
    DryingTimes warm = Answers.value(coat(FinishMaker.epoxy(), Climate.steady(20, 60), 9));
    double resting = rests.time(Stage.FULL_CURE).orElseThrow().planned().seconds();
    double steady = warm.time(Stage.FULL_CURE).orElseThrow().planned().seconds();
    assertTrue(resting > 1.8 * steady, resting + " against " + steady);
  }

  @Test
  void aSurfaceNearTheDewPointIsCautioned() {
    List<String> codes = Answers.codes(coat(FinishMaker.oil(), Climate.steady(20, 84), 9));
    assertEquals(List.of("dew-while-wet"), codes);
  }

  @Test
  void theThreeDegreeRuleHasItsEdgeAtEightyThreePercent() {
    // Dry bulb 20: 3 C above the dew point is 82.9 % relative humidity.
    assertEquals(List.of(), Answers.codes(coat(FinishMaker.oil(), Climate.steady(20, 82.5), 9)));
    assertEquals(
        List.of("dew-while-wet"),
        Answers.codes(coat(FinishMaker.oil(), Climate.steady(20, 83.2), 9)));
  }

  @Test
  void fastSolventsBlushInDampAir() {
    assertEquals(List.of(), Answers.codes(coat(FinishMaker.lacquer(), Climate.steady(20, 68), 9)));
    List<String> codes = Answers.codes(coat(FinishMaker.lacquer(), Climate.steady(20, 74), 9));
    assertEquals(List.of("blush"), codes);
  }

  @Test
  void dampHotAndDryAreEachTold() {
    FinishMaker maker = FinishMaker.waterborne();
    maker.maximumHumidity = 65;
    assertEquals(List.of("damp-while-wet"), Answers.codes(coat(maker, Climate.steady(20, 70), 9)));
    assertEquals(
        List.of("hot-while-wet"),
        Answers.codes(coat(FinishMaker.oil(), Climate.steady(36, 30), 9)));
    assertEquals(
        List.of("dry-while-wet"),
        Answers.codes(coat(FinishMaker.moistureCure(), Climate.steady(20, 35), 9)));
  }

  @Test
  void moistureCureStallsInDryAir() {
    assertEquals(
        List.of("climate"),
        Answers.refused(coat(FinishMaker.moistureCure(), Climate.steady(20, 25), 9)));
  }

  @Test
  void nightDewOnAYoungFilmIsToldWithItsHour() {
    Climate damp = Climate.swing(8, 20, 60);
    Caution dew = Answers.caution(coat(FinishMaker.oil(), damp, 14), "dew-while-wet");
    assertTrue(dew.what().pattern().contains(" that day"), dew.what().pattern());
  }
}
