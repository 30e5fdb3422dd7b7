package benchlore.schedules.coating;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.material.ApplicationMethod;
import benchlore.schedules.material.CoatBond;
import benchlore.schedules.material.DryingMechanism;
import benchlore.schedules.material.FinishFamily;
import benchlore.schedules.material.FinishRole;
import benchlore.schedules.material.Sheen;
import benchlore.schedules.material.SprayGun;
import benchlore.schedules.room.Climate;
import benchlore.schedules.time.Duration;
import benchlore.schedules.time.Moment;
import benchlore.schedules.time.ShopWeek;
import benchlore.schedules.time.Weekday;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Whole sequences: windows, scuffing, shop hours, sheen. */
class SequenceTest {
  private static final Moment NINE = Moment.of(2026, 5, 4, 9, 0);
  private static final Climate ROOM = Climate.steady(20, 50);

  private static Answer<CoatingSchedule> plan(
      FinishMaker maker, int coats, Climate room, CoatSessions hours, Sheen sheen) {
    return Coating.plan(new CoatingRequest(job(maker, coats), room, NINE, hours, sheen));
  }

  private static QuantityRequest job(FinishMaker maker, int coats) {
    return new QuantityRequest(
        maker.make(),
        CoatedArea.of(1.5, 0.8, 0.025, 1, true),
        coats,
        maker.wetFilm,
        ApplicationMethod.BRUSH,
        SprayGun.HVLP);
  }

  private static CoatingSchedule schedule(FinishMaker maker, int coats, CoatSessions hours) {
    return Answers.value(plan(maker, coats, ROOM, hours, Sheen.GLOSS));
  }

  private static CoatSessions daily(int from, int to) {
    return new CoatSessions(ShopWeek.daily(from, to), Duration.ZERO, Duration.ZERO);
  }

  private static List<ScuffReason> scuffs(CoatingSchedule schedule) {
    List<ScuffReason> scuffs = new ArrayList<>();
    for (CoatStep step : schedule.coats()) {
      scuffs.add(step.scuff());
    }
    return scuffs;
  }

  private static double hoursBetween(CoatingSchedule schedule, int first) {
    return Duration.between(
                schedule.coats().get(first).start(), schedule.coats().get(first + 1).start())
            .seconds()
        / 3600;
  }

  @Test
  void withinTheWindowCoatsFollowAtItsOpening() {
    CoatingSchedule schedule = schedule(FinishMaker.oil(), 3, CoatSessions.ALWAYS);
    // A film is denibbed, so the next coat waits until it sands.
    assertEquals(List.of(ScuffReason.NONE, ScuffReason.DENIB, ScuffReason.DENIB), scuffs(schedule));
    assertEquals(12, hoursBetween(schedule, 0));
    assertEquals(12, hoursBetween(schedule, 1));
    assertEquals(3 * 80 * 0.38, schedule.dryFilm().value(), 1e-9);
  }

  @Test
  void aMissedWindowAddsScuffing() {
    FinishMaker maker = FinishMaker.oil();
    maker.recoatCloses = Optional.of(FinishMaker.seconds(12 * 3600, 16 * 3600));
    // From 9 the window is open 19 to 21; the shop is shut until 9 the next day.
    CoatSessions hours = daily(9, 18);
    Answer<CoatingSchedule> answer = plan(maker, 2, ROOM, hours, Sheen.GLOSS);
    CoatingSchedule schedule = Answers.value(answer);
    assertEquals(ScuffReason.WINDOW_MISSED, schedule.coats().get(1).scuff());
    assertEquals(24, hoursBetween(schedule, 0));
    assertTrue(Answers.codes(answer).contains("recoat-window-missed"));
  }

  @Test
  void aCatalysedLacquerPastItsWindowWaitsForFullCure() {
    FinishMaker maker = FinishMaker.lacquer();
    maker.family = FinishFamily.CATALYSED_LACQUER;
    maker.bond = CoatBond.WITHIN_WINDOW;
    maker.recoatCloses = Optional.of(FinishMaker.seconds(6 * 3600, 24 * 3600));
    maker.recoatOpens = FinishMaker.seconds(3 * 3600, 4 * 3600);
    CoatingSchedule schedule = schedule(maker, 2, daily(8, 12));
    assertEquals(ScuffReason.WINDOW_MISSED, schedule.coats().get(1).scuff());
    assertEquals(30 * 24, hoursBetween(schedule, 0));
  }

  @Test
  void scuffAlwaysWaitsUntilItSands() {
    FinishMaker maker = FinishMaker.oil();
    maker.bond = CoatBond.SCUFF_ALWAYS;
    CoatingSchedule schedule = schedule(maker, 3, CoatSessions.ALWAYS);
    assertEquals(List.of(ScuffReason.NONE, ScuffReason.BOND, ScuffReason.BOND), scuffs(schedule));
    assertEquals(12, hoursBetween(schedule, 0));
  }

  @Test
  void aWindowWithoutAStatedEndIsScuffed() {
    FinishMaker maker = FinishMaker.oil();
    maker.recoatCloses = Optional.empty();
    assertEquals(
        List.of(ScuffReason.NONE, ScuffReason.DENIB),
        scuffs(schedule(maker, 2, CoatSessions.ALWAYS)));
  }

  @Test
  void meltingCoatsAreNeverScuffed() {
    CoatingSchedule schedule = schedule(FinishMaker.lacquer(), 3, daily(9, 10));
    assertEquals(List.of(ScuffReason.NONE, ScuffReason.NONE, ScuffReason.NONE), scuffs(schedule));
  }

  @Test
  void raisedGrainIsSandedOnce() {
    CoatingSchedule schedule = schedule(FinishMaker.waterborne(), 3, CoatSessions.ALWAYS);
    assertEquals(
        List.of(ScuffReason.NONE, ScuffReason.RAISED_GRAIN, ScuffReason.DENIB), scuffs(schedule));
  }

  @Test
  void tackyCoatsFollowBeforeTheyAreDryAndAreNotSanded() {
    FinishMaker maker = FinishMaker.epoxy();
    maker.bond = CoatBond.WHILE_TACKY;
    maker.touchDry = FinishMaker.seconds(4 * 3600, 12 * 3600);
    maker.recoatOpens = FinishMaker.seconds(2 * 3600, 6 * 3600);
    maker.recoatCloses = Optional.of(FinishMaker.seconds(12 * 3600, 24 * 3600));
    Climate warm = Climate.steady(25, 50);
    CoatingSchedule day = Answers.value(plan(maker, 3, warm, CoatSessions.ALWAYS, Sheen.GLOSS));
    assertEquals(List.of(ScuffReason.NONE, ScuffReason.NONE, ScuffReason.NONE), scuffs(day));
    assertEquals(2, hoursBetween(day, 0), 0.1);
    CoatingSchedule late = Answers.value(plan(maker, 2, warm, daily(9, 10), Sheen.GLOSS));
    assertEquals(ScuffReason.WINDOW_MISSED, late.coats().get(1).scuff());
  }

  @Test
  void aCatalysedLacquerBeginsWhenAllItsCoatsFit() {
    FinishMaker maker = FinishMaker.lacquer();
    maker.family = FinishFamily.CATALYSED_LACQUER;
    maker.bond = CoatBond.WITHIN_WINDOW;
    maker.recoatOpens = FinishMaker.seconds(3600, 2 * 3600);
    maker.recoatCloses = Optional.of(FinishMaker.seconds(6 * 3600, 24 * 3600));
    // Evenings hold one coat, Saturday holds three.
    ShopWeek week =
        ShopWeek.of(
            Map.of(
                Weekday.TUESDAY, List.of(new ShopWeek.Span(19 * 60, 21 * 60)),
                Weekday.SATURDAY, List.of(new ShopWeek.Span(9 * 60, 18 * 60))),
            List.of());
    CoatSessions hours = new CoatSessions(week, Duration.ZERO, Duration.ZERO);
    Moment tuesday = Moment.of(2026, 5, 5, 9, 0);
    CoatingRequest request = new CoatingRequest(job(maker, 3), ROOM, tuesday, hours, Sheen.GLOSS);
    Beginning begin = Coating.begin(request).orElseThrow();
    assertEquals(Weekday.SATURDAY, begin.start().date().weekday());
    assertTrue(begin.heldSeconds() > 3 * 86_400, "held " + begin.heldSeconds());
    assertTrue(begin.wonSeconds() > 20 * 86_400, "won " + begin.wonSeconds());
  }

  @Test
  void aWindowIsNeverShorterThanNothing() {
    FinishMaker maker = FinishMaker.oil();
    maker.recoatCloses = Optional.of(FinishMaker.seconds(2 * 3600, 3 * 3600));
    DryingTimes times = schedule(maker, 2, CoatSessions.ALWAYS).coats().get(0).drying();
    assertFalse(
        times
            .moment(Stage.RECOAT_CLOSES)
            .orElseThrow()
            .isBefore(times.moment(Stage.RECOAT_OPENS).orElseThrow()));
  }

  @Test
  void coldNightsPutTheNextCoatOffUntilItIsWarmEnough() {
    FinishMaker maker = FinishMaker.waterborne();
    Climate shed = Climate.steady(8, 50).withHeating(8, 17, 20);
    CoatingSchedule schedule =
        Answers.value(plan(maker, 3, shed, CoatSessions.ALWAYS, Sheen.GLOSS));
    for (CoatStep step : schedule.coats()) {
      int hour = step.start().hour();
      assertTrue(hour >= 8 && hour <= 16, step.start().toString());
    }
  }

  @Test
  void glossBuildsAndTheWantedSheenComesLast() {
    CoatingSchedule schedule =
        Answers.value(plan(FinishMaker.oil(), 3, ROOM, CoatSessions.ALWAYS, Sheen.SATIN));
    assertEquals(Optional.of(Sheen.GLOSS), schedule.coats().get(0).sheen());
    assertEquals(Optional.of(Sheen.GLOSS), schedule.coats().get(1).sheen());
    assertEquals(Optional.of(Sheen.SATIN), schedule.coats().get(2).sheen());
    assertFalse(schedule.rubOut());
  }

  @Test
  void aSheenNotSoldIsRubbedOrRefused() {
    FinishMaker lacquer = FinishMaker.lacquer();
    assertTrue(
        Answers.value(plan(lacquer, 3, ROOM, CoatSessions.ALWAYS, Sheen.SEMI_GLOSS)).rubOut());
    assertEquals(
        List.of("sheen"),
        Answers.refused(plan(FinishMaker.oil(), 3, ROOM, CoatSessions.ALWAYS, Sheen.SEMI_GLOSS)));
  }

  @Test
  void tooThickAFilmIsRefused() {
    assertEquals(
        List.of("coats"),
        Answers.refused(plan(FinishMaker.lacquer(), 5, ROOM, CoatSessions.ALWAYS, Sheen.GLOSS)));
  }

  @Test
  void sprayingIsocyanateIsRefused() {
    FinishMaker maker = FinishMaker.epoxy();
    maker.family = FinishFamily.TWO_PART_POLYURETHANE;
    maker.isocyanate = true;
    QuantityRequest job =
        new QuantityRequest(
            maker.make(),
            new CoatedArea(1, 0, true),
            2,
            80,
            ApplicationMethod.SPRAY,
            SprayGun.HVLP);
    CoatingRequest request = new CoatingRequest(job, ROOM, NINE, CoatSessions.ALWAYS, Sheen.GLOSS);
    assertEquals(List.of("method"), Answers.refused(Coating.plan(request)));
  }

  @Property(tries = 200)
  void moreCoatsNeverFinishSoonerNorTakeLess(
      @ForAll DryingMechanism mechanism,
      @ForAll @IntRange(min = 1, max = 3) int coats,
      @ForAll @DoubleRange(min = 15, max = 24) double celsius) {
    FinishMaker maker = FinishMaker.of(mechanism);
    Climate room = Climate.steady(celsius, 50);
    CoatingSchedule few = Answers.value(plan(maker, coats, room, daily(8, 20), Sheen.GLOSS));
    CoatingSchedule more = Answers.value(plan(maker, coats + 1, room, daily(8, 20), Sheen.GLOSS));
    assertTrue(!more.moment(Stage.FULL_CURE).get().isBefore(few.moment(Stage.FULL_CURE).get()));
    assertTrue(more.liquid().value() > few.liquid().value());
    for (int i = 1; i < more.coats().size(); i++) {
      DryingTimes under = more.coats().get(i - 1).drying();
      assertTrue(!more.coats().get(i).start().isBefore(under.moment(Stage.RECOAT_OPENS).get()));
    }
  }

  @Test
  void allCoatsOfAnOilAreOfOneTin() {
    FinishMaker oil = FinishMaker.oil();
    oil.role = FinishRole.PENETRATING;
    oil.bond = CoatBond.ANY_TIME;
    for (CoatStep coat :
        Answers.value(plan(oil, 3, ROOM, CoatSessions.ALWAYS, Sheen.SATIN)).coats()) {
      assertEquals(Optional.of(Sheen.SATIN), coat.sheen());
    }
    oil.sheens = List.of(Sheen.MATT);
    CoatingSchedule plain = schedule(oil, 2, CoatSessions.ALWAYS);
    assertEquals(Optional.empty(), plain.coats().get(1).sheen());
    assertFalse(plain.rubOut());
  }
}
