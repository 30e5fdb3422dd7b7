package benchlore.schedules.glueup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.Message;
import benchlore.schedules.answer.Refusal;
import benchlore.schedules.glueup.GlueUpRequest.Wood;
import benchlore.schedules.material.Adhesive.Setting;
import benchlore.schedules.quantity.Unit;
import benchlore.schedules.room.Climate;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** Cold and damp: what is refused, by whose limit, and what would do instead. */
class GlueWaysTest {
  private static List<Refusal> refused(GlueUpRequest request) {
    return GlueUp.plan(request).fold(given -> List.of(), Answer.Refused::reasons);
  }

  private static GlueUpRequest damp(Samples.AdhesiveBuilder adhesive, double percent) {
    GlueUpRequest request = Samples.request(adhesive.build(), Samples.panel(1));
    return Samples.with(request, new Wood(600, false, List.of(percent), 0));
  }

  @Test
  void polyurethaneTakesWoodThatIsTooDampForAWaterGlue() {
    // A magazine's answer on wet wood: 10 to 25 % for polyurethane, 6 to 15 % for type II or III.
    Samples.AdhesiveBuilder water = Samples.yellow();
    water.most = Optional.of(Samples.range(12, 15, Unit.PERCENT));
    Samples.AdhesiveBuilder foam = Samples.yellow();
    foam.setting = Setting.MOISTURE_REACTION;
    foam.least = Optional.of(Samples.of(8, Unit.PERCENT));
    foam.most = Optional.of(Samples.range(16, 25, Unit.PERCENT));
    assertEquals("moisturePercents", refused(damp(water, 16)).get(0).input());
    assertEquals(15, refused(damp(water, 16)).get(0).problem().quantities().get(1).value());
    assertTrue(refused(damp(foam, 16)).isEmpty());
    assertTrue(codes(damp(foam, 16)).stream().noneMatch("damp-wood"::equals));
    assertTrue(codes(damp(foam, 18)).contains("damp-wood"));
    assertTrue(codes(damp(foam, 7)).contains("too-dry-to-cure"));
    assertFalse(refused(damp(foam, 26)).isEmpty());
  }

  private static List<String> codes(GlueUpRequest request) {
    return GlueUp.plan(request)
        .fold(given -> given.cautions().stream().map(Caution::code).toList(), no -> List.of());
  }

  /** Whatever heat or room is told does what it says, tried on its own. */
  @Property(tries = 60)
  void everyWayOutThatIsToldPasses(
      @ForAll @DoubleRange(min = -5, max = 7) double low,
      @ForAll @DoubleRange(min = 8, max = 16) double high) {
    Samples.AdhesiveBuilder slow = Samples.yellow();
    slow.minimum = Samples.of(10, Unit.CELSIUS);
    slow.clamp = Samples.minutes(60, 360);
    GlueUpRequest request =
        Samples.in(Samples.request(slow.build(), Samples.panel(2)), Climate.swing(low, high, 55));
    List<Message> ways = GlueWays.of(request);
    assertTrue(ways.stream().anyMatch(way -> way.pattern().startsWith("Carry")));
    for (Message way : ways) {
      assertTrue(refused(tried(request, way)).isEmpty(), way::toString);
    }
  }

  private static GlueUpRequest tried(GlueUpRequest from, Message way) {
    double first = way.quantities().get(0).value();
    if (way.pattern().startsWith("Begin")) {
      return new GlueUpRequest(
          from.adhesive(),
          from.joints(),
          from.wood(),
          from.clamps(),
          from.climate(),
          from.start().plusSeconds(Math.rint(first)),
          from.pace());
    }
    if (way.pattern().startsWith("Heat")) {
      int hour = from.start().secondOfDay() / 3600;
      int to = (int) Math.round(way.quantities().get(1).value() / 3600 + hour) % 24;
      return from.with(from.climate().withHeating(hour, to == 0 ? 24 : to, first));
    }
    return from.with(Climate.steady(first, 50));
  }

  @Test
  void frostAfterTheClampsAreOffIsToldInHours() {
    Samples.AdhesiveBuilder adhesive = Samples.yellow();
    GlueUpRequest request =
        Samples.in(Samples.request(adhesive.build(), Samples.panel(1)), Climate.swing(2, 20, 50));
    GlueUpRequest noon =
        new GlueUpRequest(
            request.adhesive(),
            request.joints(),
            request.wood(),
            request.clamps(),
            request.climate(),
            Samples.NINE.plusHours(3),
            request.pace());
    Answer.Given<GlueUpSchedule> given = (Answer.Given<GlueUpSchedule>) GlueUp.plan(noon);
    Caution cold =
        given.cautions().stream()
            .filter(caution -> caution.code().equals("cold-night"))
            .findFirst()
            .orElseThrow();
    double after = cold.what().quantities().get(1).value();
    int seconds = (int) Math.round(after);
    Climate room = noon.climate();
    assertTrue(room.at(given.value().clampsOff().at(), seconds).celsius() < 8);
    assertTrue(room.at(given.value().clampsOff().at(), seconds - 601).celsius() >= 8);
    assertTrue(cold.measure().quantities().get(1).value() > after);
  }
}
