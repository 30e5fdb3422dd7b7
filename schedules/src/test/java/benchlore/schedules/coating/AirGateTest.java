package benchlore.schedules.coating;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Refusal;
import benchlore.schedules.material.ApplicationMethod;
import benchlore.schedules.material.Sheen;
import benchlore.schedules.material.SprayGun;
import benchlore.schedules.room.Climate;
import benchlore.schedules.time.Duration;
import benchlore.schedules.time.Moment;
import benchlore.schedules.time.ShopWeek;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** From the brush to touch dry no coat goes past what the finish stands. */
class AirGateTest {
  private static final Moment DAY = Moment.of(2026, 5, 4, 0, 0);

  private static Answer<DryingTimes> coat(FinishMaker maker, Climate room, int hour) {
    return Coating.drying(
        new DryingRequest(maker.make(), maker.wetFilm, room, DAY.date().at(hour, 0)));
  }

  private static CoatingRequest job(FinishMaker maker, int coats, Climate room, ShopWeek week) {
    QuantityRequest quantity =
        new QuantityRequest(
            maker.make(),
            CoatedArea.of(1, 0.5, 0.02, 1, true),
            coats,
            maker.wetFilm,
            ApplicationMethod.BRUSH,
            SprayGun.HVLP);
    CoatSessions hours = new CoatSessions(week, Duration.ofSeconds(900), Duration.ofSeconds(2700));
    return new CoatingRequest(quantity, room, DAY, hours, Sheen.GLOSS);
  }

  private static String problem(Answer<?> answer) {
    return reason(answer).problem().pattern();
  }

  private static Refusal reason(Answer<?> answer) {
    assertEquals(List.of("climate"), Answers.refused(answer));
    return ((Answer.Refused<?>) answer).reasons().get(0);
  }

  @Test
  void belowTheMinimumNothingGoesOn() {
    List<FinishMaker> makers =
        List.of(FinishMaker.waterborne(), FinishMaker.oil(), FinishMaker.epoxy());
    for (FinishMaker maker : makers) {
      Climate cold = Climate.steady(maker.minimumCelsius - 1, 50);
      assertTrue(problem(coat(maker, cold, 9)).startsWith("Too cold"));
    }
  }

  @Test
  void coldIsNamedBeforeDew() {
    assertTrue(problem(coat(FinishMaker.oil(), Climate.steady(5, 98), 9)).startsWith("Too cold"));
    assertTrue(problem(coat(FinishMaker.oil(), Climate.steady(20, 84), 9)).startsWith("Dew"));
  }

  @Test
  void dampHotAndDryAreEachRefused() {
    FinishMaker damp = FinishMaker.waterborne();
    damp.maximumHumidity = 65;
    assertTrue(problem(coat(damp, Climate.steady(20, 70), 9)).startsWith("Too damp"));
    assertTrue(problem(coat(FinishMaker.oil(), Climate.steady(36, 30), 9)).startsWith("Too hot"));
    assertTrue(
        problem(coat(FinishMaker.moistureCure(), Climate.steady(20, 35), 9)).startsWith("Too dry"));
  }

  @Test
  void anEveningThatTurnsColdBeforeItIsTouchDryIsRefusedThoughItBeginsWarm() {
    Climate shed = Climate.steady(6, 60).withHeating(9, 22, 18);
    assertTrue(problem(coat(FinishMaker.oil(), shed, 19)).contains("21:50 that day"));
    assertTrue(coat(FinishMaker.oil(), shed, 10) instanceof Answer.Given);
  }

  @Test
  void anUnheatedShedIsShownTheHeatThatPasses() {
    CoatingRequest shed =
        job(FinishMaker.oil(), 2, Climate.swing(-5, 8, 60), ShopWeek.daily(18, 21));
    assertTrue(Coating.begin(shed).isEmpty());
    Refusal refusal = reason(Coating.plan(shed));
    String ways = refusal.remedy().pattern();
    assertTrue(ways.contains("Heat room and work at {0} from 17:00"), ways);
    assertTrue(ways.contains("Carry the work into a room"), ways);
    double celsius = refusal.remedy().quantities().get(0).value();
    assertTrue(celsius > 10 && celsius <= 20, "thermostat " + celsius);
  }

  @Test
  void eveningsTooLateInTheDayAreShownTheMorning() {
    CoatingRequest evenings =
        job(FinishMaker.oil(), 1, Climate.swing(6, 22, 45), ShopWeek.daily(19, 21));
    assertTrue(Coating.begin(evenings).isEmpty());
    Refusal refusal = reason(Coating.plan(evenings));
    assertTrue(refusal.remedy().pattern().startsWith("Be there when the air allows"));
  }

  /** The rule itself, looked at from outside: the climate at every ten minutes. */
  @Property(tries = 300)
  void whateverIsBookedKeepsTheLimitsUntilTouchDry(
      @ForAll @DoubleRange(min = -5, max = 22) double low,
      @ForAll @DoubleRange(min = 1, max = 14) double rise,
      @ForAll @DoubleRange(min = 20, max = 85) double humidity,
      @ForAll @IntRange(min = 0, max = 20) int open,
      @ForAll @IntRange(min = 0, max = 3) int kind) {
    FinishMaker maker =
        List.of(
                FinishMaker.oil(),
                FinishMaker.waterborne(),
                FinishMaker.lacquer(),
                FinishMaker.epoxy())
            .get(kind);
    Climate room = Climate.swing(low, low + rise, humidity);
    CoatingRequest request = job(maker, 2, room, ShopWeek.daily(open, open + 4));
    if (Coating.begin(request).isEmpty()) {
      return;
    }
    Moment first = Coating.begin(request).get().start();
    CoatingRequest begun =
        new CoatingRequest(request.quantity(), room, first, request.sessions(), request.sheen());
    if (Coating.plan(begun) instanceof Answer.Given<CoatingSchedule> given) {
      for (CoatStep step : given.value().coats()) {
        double wet = step.drying().time(Stage.TOUCH_DRY).orElseThrow().planned().seconds();
        for (double second = 0; second <= wet; second += 600) {
          Climate.Reading air = room.at(step.start().plusSeconds(second));
          double before = room.at(step.start().plusSeconds(second - 3600)).celsius();
          double surface = Math.min(air.celsius(), before);
          assertFalse(surface < maker.minimumCelsius - 1e-6, "surface " + surface);
          assertFalse(air.relativeHumidityPercent() > maker.maximumHumidity + 1e-6);
          assertFalse(surface - air.dewPointCelsius() < 3 - 1e-6, "dew");
        }
      }
    }
  }
}
