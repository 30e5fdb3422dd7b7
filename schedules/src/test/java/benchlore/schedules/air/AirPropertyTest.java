package benchlore.schedules.air;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.material.ApplicationMethod;
import benchlore.schedules.material.Solvent;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

class AirPropertyTest {
  private static final int TRIES = 200;

  @Provide
  Arbitrary<Release> release() {
    Arbitrary<Solvent> solvent =
        Arbitraries.of("toluene", "ethanol", "acetone", "turpentine", "n-butyl acetate")
            .map(Solvents::of);
    return Combinators.combine(
            Arbitraries.doubles().between(0, 20_000),
            Arbitraries.doubles().between(0.001, 3).ofScale(4),
            solvent,
            Arbitraries.doubles().between(0.1, 1),
            Arbitraries.of(ApplicationMethod.class))
        .as(
            (start, kg, s, share, method) ->
                new Release(
                    start, kg, List.of(new Release.Share(s, share)), method, Optional.empty()));
  }

  @Provide
  Arbitrary<List<Release>> releases() {
    return release().list().ofMinSize(1).ofMaxSize(4);
  }

  @Provide
  Arbitrary<RoomAir> room() {
    return Combinators.combine(
            Arbitraries.doubles().between(10, 1000),
            Arbitraries.doubles().between(0.2, 30),
            Arbitraries.doubles().between(1, 10),
            Arbitraries.doubles().between(-10, 40))
        .as(RoomAir::ofAirChanges);
  }

  private static AirSchedule schedule(RoomAir room, List<Release> releases) {
    return AirPlan.of(new AirRequest(room, releases, List.of(), false, false, false));
  }

  private static double peak(AirSchedule schedule) {
    return schedule.peaks().index().orElseThrow().value();
  }

  @Property(tries = TRIES)
  void neverNegativeNeverNaN(
      @ForAll("room") RoomAir room, @ForAll("releases") List<Release> releases) {
    AirSchedule s = schedule(room, releases);
    double before = -1;
    for (AirSchedule.Point point : s.curve()) {
      assertTrue(point.second() > before);
      before = point.second();
      assertTrue(point.ppm() >= -1e-9 && Double.isFinite(point.ppm()));
      assertTrue(point.index().orElseThrow() <= peak(s) * (1 + 1e-9) + 1e-12);
    }
    for (AirSchedule.ReEntry reEntry : s.reEntries()) {
      assertTrue(reEntry.second().orElse(0) >= 0);
    }
    assertTrue(s.eightHour().index().orElseThrow() <= peak(s) * (1 + 1e-9));
    assertTrue(Double.isFinite(s.flow().changesPerHour()) && s.flow().changesPerHour() > 0);
  }

  @Property(tries = TRIES)
  void planNeverThrows(@ForAll double a, @ForAll double b, @ForAll double c) {
    Release release =
        new Release(
            a,
            b,
            List.of(new Release.Share(Solvents.of("acetone"), c)),
            ApplicationMethod.BRUSH,
            Optional.of(new ReleaseCurve(c, a, b)));
    AirRequest request =
        new AirRequest(new RoomAir(a, b, c, a), List.of(release), List.of(), false, false, false);
    Answer<AirSchedule> answer = Air.plan(request);
    int told = answer.fold(g -> g.working().size(), r -> r.reasons().size());
    assertTrue(told > 0);
  }

  @Property(tries = TRIES)
  void moreOutdoorAirNeverMakesItWorse(
      @ForAll("room") RoomAir room,
      @ForAll("releases") List<Release> releases,
      @ForAll @DoubleRange(min = 1, max = 5) double more) {
    RoomAir windy =
        new RoomAir(room.volume(), room.outdoorFlow() * more, room.mixingFactor(), room.celsius());
    assertTrue(peak(schedule(windy, releases)) <= peak(schedule(room, releases)) * (1 + 1e-9));
  }

  @Property(tries = TRIES)
  void twiceTheSolventIsTwiceTheVapour(
      @ForAll("room") RoomAir room, @ForAll("release") Release release) {
    Release twice =
        new Release(
            release.startSecond(),
            2 * release.volatileKilogram(),
            release.shares(),
            release.method(),
            release.curve());
    double one = peak(schedule(room, List.of(release)));
    assertEquals(2 * one, peak(schedule(room, List.of(twice))), 1e-5 * one);
  }

  /** In a close room the slow share peaks many hours after the coat; the peak is still found. */
  @Property(tries = TRIES)
  void nothingLaterPassesThePeak(
      @ForAll("room") RoomAir room, @ForAll("releases") List<Release> releases) {
    double peak = peak(schedule(room, releases));
    Exposure exposure = Exposure.of(room, releases);
    for (double second = 0; second < 20 * 86_400.0; second = second + 7_200) {
      assertTrue(exposure.at(LimitScale.HEALTH, second) <= peak * (1 + 1e-7) + 1e-12);
    }
  }

  /** A close room of 10 m3 with a fifth of an air change an hour, badly mixed. */
  @Example
  void aPeakLongAfterTheCoatIsFound() {
    RoomAir room = new RoomAir(10, 2.0 / 3600, 8.39, 0);
    Release release =
        new Release(
            0,
            0.0106,
            List.of(new Release.Share(Solvents.of("toluene"), 0.25)),
            ApplicationMethod.FLOOD,
            Optional.empty());
    AirSchedule schedule = schedule(room, List.of(release));
    Exposure exposure = Exposure.of(room, List.of(release));
    double highest = 0;
    for (double second = 0; second < 3 * 86_400.0; second = second + 10) {
      highest = Math.max(highest, exposure.at(LimitScale.HEALTH, second));
    }
    assertTrue(schedule.peaks().index().orElseThrow().second() > 8.25 * 3600);
    assertEquals(highest, peak(schedule), 1e-7 * highest);
  }

  @Property(tries = TRIES)
  void theFlowAskedForIsEnough(
      @ForAll("room") RoomAir room, @ForAll("releases") List<Release> releases) {
    FlowNeeded flow = schedule(room, releases).flow();
    RoomAir enough =
        new RoomAir(room.volume(), flow.governing(), room.mixingFactor(), room.celsius());
    AirSchedule s = schedule(enough, releases);
    assertTrue(s.worstIndex() <= 1 + 1e-9);
    assertTrue(s.peaks().percentLowerExplosive().orElseThrow().value() <= 10 + 1e-9);
    RoomAir lean =
        new RoomAir(
            room.volume(),
            flow.healthEightHour().orElseThrow(),
            room.mixingFactor(),
            room.celsius());
    assertTrue(schedule(lean, releases).eightHour().index().orElseThrow() <= 1 + 1e-9);
  }

  @Property(tries = TRIES)
  void airIsFineFromReEntryUntilTheNextCoat(
      @ForAll("room") RoomAir room,
      @ForAll("releases") List<Release> releases,
      @ForAll @DoubleRange(min = 0, max = 1) double share) {
    AirSchedule s = schedule(room, releases);
    Exposure exposure = Exposure.of(room, releases);
    List<AirSchedule.ReEntry> all = s.reEntries();
    for (int i = 0; i < all.size(); i++) {
      AirSchedule.ReEntry reEntry = all.get(i);
      if (reEntry.healthSecond().isPresent()) {
        double from = reEntry.coatStartSecond() + reEntry.healthSecond().getAsDouble();
        double next = i + 1 < all.size() ? all.get(i + 1).coatStartSecond() : from + 200_000;
        double moment = from + share * Math.max(0, next - from);
        assertTrue(exposure.at(LimitScale.HEALTH, moment) <= 1 + 1e-6);
      }
    }
  }

  /** The room stepped by itself, second by second, gives the same worst 15 minutes. */
  @Property(tries = 20)
  void theWorstQuarterHourIsThatOfARoomSteppedByItself(
      @ForAll("room") RoomAir room, @ForAll("release") Release release) {
    Release atOnce =
        new Release(
            0, release.volatileKilogram(), release.shares(), release.method(), Optional.empty());
    Release.Share share = atOnce.shares().get(0);
    ReleaseCurve curve = atOnce.curveOf(share);
    double mass = atOnce.volatileKilogram() * share.massShare();
    double changes = room.outdoorFlow() / room.mixingFactor() / room.volume();
    double perPpm = 1 / (3 * ExposureLimit.of(share.solvent()).orElseThrow().ppm());
    double each =
        Vapour.ppm(1, share.solvent().molarMass().low(), room.celsius()) * perPpm / room.volume();
    double[] sums = new double[20_001];
    double inRoom = 0;
    for (int second = 0; second < 20_000; second++) {
      double quick = curve.quickShare() * mass / curve.quickSecond();
      double late = Math.exp((curve.quickSecond() - second) / curve.decaySecond());
      double slow = (1 - curve.quickShare()) * mass / curve.decaySecond() * late;
      double released = second < curve.quickSecond() ? quick : slow;
      inRoom += released - changes * inRoom;
      sums[second + 1] = sums[second] + inRoom * each;
    }
    double worst = 0;
    for (int second = 900; second <= 20_000; second++) {
      worst = Math.max(worst, (sums[second] - sums[second - 900]) / 900);
    }
    AirSchedule schedule = schedule(room, List.of(atOnce));
    double got = schedule.peaks().quarterHour().orElseThrow().value();
    assertTrue(got >= worst * 0.985, () -> "too low");
    assertTrue(late(schedule) || got <= worst * 1.02, () -> "too high");
  }

  /** Whether the highest comes after what was stepped through. */
  private static boolean late(AirSchedule schedule) {
    return schedule.peaks().quarterHour().orElseThrow().second() > 19_000;
  }

  @Property(tries = TRIES)
  void massBalances(
      @ForAll("room") RoomAir room,
      @ForAll("release") Release release,
      @ForAll @DoubleRange(min = 0, max = 100_000) double second) {
    MixedRoom mixed = MixedRoom.of(room);
    Emission emission = Emission.of(release, release.shares().get(0));
    double inRoom = mixed.volume() * mixed.concentration(emission, second);
    double gone = mixed.dose(emission, second) * mixed.changesPerSecond() * mixed.volume();
    assertEquals(emission.releasedKilogram(second), inRoom + gone, 1e-9);
    assertTrue(gone >= -1e-12);
  }

  @Property(tries = TRIES)
  void ppmAndMassAreEachOthersInverse(
      @ForAll @DoubleRange(min = 0, max = 1e6) double ppm,
      @ForAll @DoubleRange(min = 2, max = 500) double gramPerMole,
      @ForAll @DoubleRange(min = -20, max = 50) double celsius) {
    double mass = Vapour.kilogramPerCubicMetre(ppm, gramPerMole / 1000, celsius);
    assertEquals(ppm, Vapour.ppm(mass, gramPerMole / 1000, celsius), 1e-9 * ppm);
  }
}
