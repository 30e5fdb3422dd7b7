package benchlore.schedules.coating;

import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.material.ApplicationMethod;
import benchlore.schedules.material.Finish;
import benchlore.schedules.material.Sheen;
import benchlore.schedules.material.SprayGun;
import benchlore.schedules.room.Climate;
import benchlore.schedules.time.Duration;
import benchlore.schedules.time.Moment;
import benchlore.schedules.time.ShopWeek;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Nonsense in, a refusal out. */
class HostileCoatingTest {
  private static final Moment NINE = Moment.of(2026, 5, 4, 9, 0);
  private static final Climate ROOM = Climate.steady(20, 50);

  private static QuantityRequest job(Finish finish, CoatedArea area, int coats, double micron) {
    return new QuantityRequest(finish, area, coats, micron, ApplicationMethod.BRUSH, SprayGun.HVLP);
  }

  private static CoatedArea table() {
    return CoatedArea.of(1.5, 0.8, 0.025, 1, true);
  }

  @ParameterizedTest
  @ValueSource(
      doubles = {
        -1,
        0,
        1e9,
        Double.NaN,
        Double.POSITIVE_INFINITY,
        Double.NEGATIVE_INFINITY,
        -0.0,
        1e300
      })
  void badWetFilm(double micron) {
    Finish finish = FinishMaker.oil().make();
    Answers.refused(Coating.drying(new DryingRequest(finish, micron, ROOM, NINE)));
    Answers.refused(LiquidQuantity.plan(job(finish, table(), 2, micron)));
    Answers.refused(Coating.coats(new CoatsRequest(finish, micron, 100)));
    Answers.refused(Coating.coats(new CoatsRequest(finish, 80, micron)));
    Answers.refused(plan(finish, table(), 2, micron));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY, 1e12})
  void badArea(double size) {
    Finish finish = FinishMaker.oil().make();
    Answers.refused(LiquidQuantity.plan(job(finish, new CoatedArea(size, 1, true), 2, 80)));
    Answers.refused(LiquidQuantity.plan(job(finish, new CoatedArea(1, size, true), 2, 80)));
    Answers.refused(plan(finish, new CoatedArea(size, size, false), 2, 80));
  }

  @ParameterizedTest
  @ValueSource(ints = {-3, 0, 51, Integer.MAX_VALUE, Integer.MIN_VALUE})
  void badCoats(int coats) {
    Finish finish = FinishMaker.oil().make();
    Answers.refused(LiquidQuantity.plan(job(finish, table(), coats, 80)));
    Answers.refused(plan(finish, table(), coats, 80));
  }

  @Test
  void nothingToCoat() {
    Finish finish = FinishMaker.oil().make();
    Answers.refused(LiquidQuantity.plan(job(finish, new CoatedArea(0, 0, true), 2, 80)));
  }

  static Stream<Arguments> badFinishes() {
    return Stream.of(
        bad("reference air saturated", m -> m.referenceHumidity = 100),
        bad("reference air at 500 C", m -> m.referenceCelsius = 500),
        bad("no solids", m -> m.solids = 0),
        bad("more than all solids", m -> m.solids = 150),
        bad("negative film", m -> m.wetFilm = -80),
        bad("negative wait", m -> m.recoatOpens = FinishMaker.seconds(-10, 10)),
        bad("a wait of centuries", m -> m.fullCure = FinishMaker.seconds(1, 1e12)),
        bad("minimum of 500 C", m -> m.minimumCelsius = 500),
        bad("no stages at all", m -> m.stages = false));
  }

  private static Arguments bad(String name, Consumer<FinishMaker> change) {
    return Arguments.of(name, change);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("badFinishes")
  void badFinish(String name, Consumer<FinishMaker> change) {
    FinishMaker maker = FinishMaker.oil();
    change.accept(maker);
    List<String> inputs =
        Answers.refused(Coating.drying(new DryingRequest(maker.make(), 80, ROOM, NINE)));
    assertTrue(!inputs.isEmpty(), name);
    Answers.refused(plan(maker.make(), table(), 2, 80));
    Answers.refused(
        SheenRoute.plan(
            new SheenRequest(
                job(maker.make(), table(), 2, 80),
                NINE,
                NINE,
                ROOM,
                Optional.empty(),
                Sheen.SATIN)));
  }

  private static CoatSessions nobody() {
    return new CoatSessions(ShopWeek.of(Map.of(), List.of()), Duration.ZERO, Duration.ZERO);
  }

  @Test
  void allProblemsAreToldAtOnce() {
    Finish finish = FinishMaker.oil().make();
    CoatingRequest request =
        new CoatingRequest(
            job(finish, new CoatedArea(-1, -1, true), 0, Double.NaN),
            ROOM,
            NINE,
            nobody(),
            Sheen.MATT);
    List<String> inputs = Answers.refused(Coating.plan(request));
    assertTrue(
        inputs.containsAll(
            List.of("sessions", "faceSquareMetre", "edgeSquareMetre", "coats", "wetFilmMicron")),
        inputs.toString());
  }

  private static Answer<CoatingSchedule> plan(
      Finish finish, CoatedArea area, int coats, double micron) {
    return Coating.plan(
        new CoatingRequest(
            job(finish, area, coats, micron), ROOM, NINE, CoatSessions.ALWAYS, Sheen.GLOSS));
  }
}
