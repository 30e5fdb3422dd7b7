package benchlore.schedules.glueup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Refusal;
import benchlore.schedules.glueup.GlueUpRequest.Arrangement;
import benchlore.schedules.glueup.GlueUpRequest.Clamps;
import benchlore.schedules.glueup.GlueUpRequest.Joint;
import benchlore.schedules.glueup.GlueUpRequest.Pace;
import benchlore.schedules.glueup.GlueUpRequest.Wood;
import benchlore.schedules.material.Adhesive.OilyWoods;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;
import benchlore.schedules.room.Climate;
import benchlore.schedules.time.Moment;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is refused, with which reason and remedy. */
class GlueUpRefusalsTest {
  private static final GlueUpRequest FINE =
      Samples.request(Samples.yellow().build(), Samples.panel(2));

  private static List<Refusal> refused(GlueUpRequest request) {
    return GlueUp.plan(request).fold(given -> List.of(), Answer.Refused::reasons);
  }

  private static void assertRefusedFor(String input, GlueUpRequest request) {
    List<Refusal> reasons = refused(request);
    assertFalse(reasons.isEmpty(), "not refused");
    assertEquals(input, reasons.get(0).input(), reasons::toString);
  }

  private static GlueUpRequest joint(Joint joint) {
    return Samples.request(Samples.yellow().build(), joint);
  }

  private static Joint edge(double length, double width, int count, double backing, double gap) {
    return new Joint("edge", length, width, count, Arrangement.IN_LINE, backing, gap);
  }

  @ParameterizedTest
  @ValueSource(
      doubles = {
        Double.NaN,
        Double.POSITIVE_INFINITY,
        Double.NEGATIVE_INFINITY,
        -1,
        1e300,
        -Double.MIN_VALUE
      })
  void nonsenseNumbers(double x) {
    assertRefusedFor("lengthMetre", joint(edge(x, 0.02, 1, 0.1, 0)));
    assertRefusedFor("widthMetre", joint(edge(1, x, 1, 0.1, 0)));
    assertRefusedFor("backingMetre", joint(edge(1, 0.02, 1, x, 0)));
    assertRefusedFor("gapMetre", joint(edge(1, 0.02, 1, 0.1, x)));
    assertRefusedFor(
        "densityKilogramPerCubicMetre", Samples.with(FINE, new Wood(x, false, List.of(8.0), 0)));
    assertRefusedFor(
        "moisturePercents", Samples.with(FINE, new Wood(600, false, List.of(8.0, x), 0)));
    assertRefusedFor(
        "sinceMachinedSecond", Samples.with(FINE, new Wood(600, false, List.of(8.0), x)));
    assertRefusedFor("forceNewton", Samples.with(FINE, new Clamps(12, x, 0, 0)));
    assertRefusedFor("caulDepthMetre", Samples.with(FINE, new Clamps(12, 2500, x, 0)));
    assertRefusedFor("headMetre", Samples.with(FINE, new Clamps(12, 2500, 0, x)));
    assertRefusedFor("perJointSecond", Samples.with(FINE, new Pace(x, 400, 20, 1)));
    assertRefusedFor("perSquareMetreSecond", Samples.with(FINE, new Pace(20, x, 20, 1)));
    assertRefusedFor("perClampSecond", Samples.with(FINE, new Pace(20, 400, x, 1)));
  }

  @ParameterizedTest
  @ValueSource(ints = {0, -1, Integer.MIN_VALUE, Integer.MAX_VALUE})
  void nonsenseCounts(int count) {
    assertRefusedFor("count", joint(edge(1, 0.02, count, 0.1, 0)));
    assertRefusedFor("clamps.count", Samples.with(FINE, new Clamps(count, 2500, 0, 0)));
    assertRefusedFor("people", Samples.with(FINE, new Pace(20, 400, 20, count)));
  }

  @Test
  void everyReasonIsToldAtOnce() {
    GlueUpRequest request =
        Samples.with(
            Samples.with(joint(edge(-1, 0, 0, 0, -1)), new Clamps(0, 0, -1, -1)),
            new Wood(-1, false, List.of(), -1));
    assertEquals(13, refused(request).size());
  }

  @Test
  void noJointsOrTooManyOrBraces() {
    assertRefusedFor("joints", Samples.request(Samples.yellow().build()));
    assertRefusedFor(
        "joints", Samples.request(Samples.yellow().build(), Samples.panel(60), Samples.panel(60)));
    assertRefusedFor("name", joint(new Joint("{0}", 1, 0.02, 1, Arrangement.SEPARATE, 0.1, 0)));
  }

  static Stream<Arguments> badAdhesives() {
    return Stream.of(
        Arguments.of("open-time", Samples.of(-1, Unit.SECOND)),
        Arguments.of("open-time", Samples.of(5, Unit.METRE)),
        Arguments.of("spread", Samples.of(150, Unit.KILOGRAM_PER_SQUARE_METRE)),
        Arguments.of("density", Samples.of(1.1, Unit.KILOGRAM_PER_CUBIC_METRE)),
        Arguments.of("minimum-temperature", Samples.of(500, Unit.CELSIUS)),
        Arguments.of("pressure-softwood", Samples.of(1e9, Unit.PASCAL)),
        Arguments.of("rate-q10", Samples.of(0, Unit.RATIO)));
  }

  @ParameterizedTest
  @MethodSource("badAdhesives")
  void recordInTheWrongUnitOrRange(String name, SourcedRange bad) {
    Samples.AdhesiveBuilder adhesive = Samples.yellow();
    switch (name) {
      case "open-time" -> adhesive.open = bad;
      case "spread" -> adhesive.spread = bad;
      case "density" -> adhesive.density = bad;
      case "minimum-temperature" -> adhesive.minimum = bad;
      case "pressure-softwood" -> adhesive.soft = bad;
      default -> adhesive.q10 = Optional.of(bad);
    }
    assertRefusedFor("adhesive." + name, Samples.request(adhesive.build(), Samples.panel(1)));
  }

  @Test
  void aFillerIsNoGlueLine() {
    Samples.AdhesiveBuilder thick = Samples.yellow();
    thick.spread = Samples.of(3, Unit.KILOGRAM_PER_SQUARE_METRE);
    assertRefusedFor("adhesive.spread", Samples.request(thick.build(), Samples.panel(1)));
    Samples.AdhesiveBuilder wide = Samples.yellow();
    wide.gap = Samples.of(0.025, Unit.METRE);
    assertRefusedFor("adhesive.maximum-gap", Samples.request(wide.build(), Samples.panel(1)));
  }

  @Test
  void startOutOfTime() {
    GlueUpRequest request =
        new GlueUpRequest(
            FINE.adhesive(),
            FINE.joints(),
            FINE.wood(),
            FINE.clamps(),
            FINE.climate(),
            new Moment(1e13),
            FINE.pace());
    assertRefusedFor("start", request);
  }

  @Test
  void coldShopIsRefusedWithTheHourItWillDo() {
    Refusal reason = refused(Samples.in(FINE, Climate.swing(0, 18, 50))).get(0);
    assertEquals("climate", reason.input());
    assertTrue(reason.remedy().pattern().startsWith("Begin {0} later"), reason::toString);
    assertEquals(Unit.SECOND, reason.remedy().quantities().get(0).unit());
    double later = reason.remedy().quantities().get(0).value();
    GlueUpRequest warm =
        new GlueUpRequest(
            FINE.adhesive(),
            FINE.joints(),
            FINE.wood(),
            FINE.clamps(),
            Climate.swing(0, 18, 50),
            FINE.start().plusSeconds(Math.floor(later)),
            FINE.pace());
    assertTrue(refused(warm).isEmpty());
  }

  @Test
  void roomThatFallsCold() {
    // Warm enough at 9 in the morning, too cold before a 20-hour clamp time is over.
    Samples.AdhesiveBuilder slow = Samples.yellow();
    slow.clamp = Samples.minutes(1200, 1200);
    GlueUpRequest request =
        Samples.in(Samples.request(slow.build(), Samples.panel(1)), Climate.swing(6, 24, 50));
    assertRefusedFor("climate", request);
    assertTrue(refused(Samples.in(request, Climate.swing(9, 24, 50))).isEmpty());
  }

  @Test
  void hotShopOilyWoodWetWoodAndGaps() {
    assertRefusedFor("climate", Samples.in(FINE, Climate.steady(41, 30)));
    Samples.AdhesiveBuilder adhesive = Samples.yellow();
    adhesive.oily = OilyWoods.AVOID;
    GlueUpRequest request = Samples.request(adhesive.build(), Samples.panel(1));
    assertRefusedFor("adhesive", Samples.with(request, new Wood(900, true, List.of(8.0), 0)));
    assertTrue(refused(Samples.with(request, new Wood(900, false, List.of(8.0), 0))).isEmpty());
    assertRefusedFor(
        "moisturePercents", Samples.with(FINE, new Wood(600, false, List.of(8.0, 21.0), 0)));
    assertRefusedFor("gapMetre", joint(edge(0.8, 0.02, 1, 0.1, 0.0005)));
  }

  @Test
  void tooFewClampsNamesTheCaulThatWouldDo() {
    GlueUpRequest thin = joint(edge(0.8, 0.02, 1, 0.006, 0));
    Refusal reason = refused(Samples.with(thin, new Clamps(5, 2500, 0, 0))).get(0);
    assertEquals("clamps.count", reason.input());
    double caul = reason.remedy().quantities().get(0).value();
    assertTrue(refused(Samples.with(thin, new Clamps(5, 2500, caul, 0))).isEmpty());
    assertFalse(refused(Samples.with(thin, new Clamps(5, 2500, caul - 0.002, 0))).isEmpty());
  }

  @Test
  void oneJointTooSlowToClose() {
    assertRefusedFor("pace", Samples.with(FINE, new Pace(600, 400, 20, 1)));
  }

  @Test
  void nullIsTheCallersMistake() {
    assertThrows(NullPointerException.class, () -> GlueUp.plan(null));
  }
}
