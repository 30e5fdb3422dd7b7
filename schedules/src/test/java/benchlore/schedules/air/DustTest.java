package benchlore.schedules.air;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.Refusal;
import java.util.List;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DustTest {
  private static final int TRIES = 200;
  private static final RoomAir GARAGE = RoomAir.ofAirChanges(60, 4, 3, 20);

  private static DustRequest bare(RoomAir room, double kilogram, DustCapture capture) {
    return new DustRequest(
        room, DustSource.BARE_WOOD, kilogram, 3600, capture, OptionalDouble.empty());
  }

  private static DustSchedule given(DustRequest request) {
    return Dust.plan(request)
        .fold(
            Answer.Given::value,
            refused -> {
              throw new AssertionError(refused.reasons());
            });
  }

  private static List<Refusal> refusals(DustRequest request) {
    return Dust.plan(request).fold(g -> List.of(), Answer.Refused::reasons);
  }

  private static List<String> codes(DustRequest request) {
    return Dust.plan(request)
        .fold(g -> g.cautions().stream().map(Caution::code).toList(), r -> List.of());
  }

  @Property(tries = TRIES)
  void massIsKept(
      @ForAll @DoubleRange(min = 0.01, max = 0.2) double kilogram, @ForAll DustCapture capture) {
    DustSchedule s = given(bare(GARAGE, kilogram, capture));
    double sum = s.capturedKilogram() + s.settledKilogram() + s.airborneKilogram();
    assertEquals(kilogram, sum, 1e-12);
    assertTrue(s.airborneKilogram() >= 0 && s.settledKilogram() >= 0);
  }

  @Property(tries = TRIES)
  void betterCaptureAndMoreAirNeverMakeItWorse(
      @ForAll @DoubleRange(min = 0.01, max = 0.2) double kilogram,
      @ForAll @DoubleRange(min = 1, max = 20) double changes) {
    double before = Double.MAX_VALUE;
    for (DustCapture capture : DustCapture.values()) {
      double index = given(bare(GARAGE, kilogram, capture)).peakIndex();
      assertTrue(index < before);
      before = index;
    }
    RoomAir windy = RoomAir.ofAirChanges(60, 4 + changes, 3, 20);
    assertTrue(
        given(bare(windy, kilogram, DustCapture.NONE)).peakIndex()
            < given(bare(GARAGE, kilogram, DustCapture.NONE)).peakIndex());
  }

  @Property(tries = TRIES)
  void theFlowAskedForIsEnough(@ForAll @DoubleRange(min = 0.01, max = 0.2) double kilogram) {
    double flow = given(bare(GARAGE, kilogram, DustCapture.VACUUM)).flowNeeded();
    DustSchedule s = given(bare(new RoomAir(60, flow, 3, 20), kilogram, DustCapture.VACUUM));
    assertTrue(s.eightHourIndex() <= 1 + 1e-9);
  }

  @Property(tries = TRIES)
  void clearMeansDownToTheLimit(@ForAll @DoubleRange(min = 0.01, max = 0.2) double kilogram) {
    DustSchedule s = given(bare(GARAGE, kilogram, DustCapture.NONE));
    Emission emission = new Emission(0, s.airborneKilogram(), new ReleaseCurve(1, 3600, 1));
    double then =
        MixedRoom.of(GARAGE).concentration(emission, 3600 + s.clearSecond().orElseThrow());
    assertEquals(1e-6, then, 1e-12);
  }

  /** By hand: 0.2 kg, a tenth of 14 percent of it in the air over an hour, 60 m3, 4 / 3 an hour. */
  @Test
  void workedByHand() {
    DustSchedule s = given(bare(GARAGE, 0.2, DustCapture.VACUUM));
    assertEquals(0.0028, s.airborneKilogram(), 1e-9);
    assertEquals(25.77e-6, s.peakKilogramPerCubicMetre(), 0.01e-6);
    // 26 mg/m3 for a moment is 8.6 times three times the 8-hour limit: within a half mask's ten.
    assertEquals(Respirator.DUST_HALF_MASK, s.respirator().respirator());
    DustSchedule more = given(bare(GARAGE, 0.3, DustCapture.VACUUM));
    assertEquals(Respirator.DUST_FULL_FACE, more.respirator().respirator());
  }

  @Test
  void cedarHasTheLowerLimit() {
    DustRequest cedar =
        new DustRequest(
            GARAGE,
            DustSource.SENSITISING_WOOD,
            0.01,
            3600,
            DustCapture.VACUUM,
            OptionalDouble.empty());
    assertEquals(DustLimit.ACGIH_SENSITISER, given(cedar).governing());
    assertTrue(codes(cedar).contains("sensitising-wood"));
    assertEquals(DustLimit.NIOSH, given(bare(GARAGE, 0.01, DustCapture.VACUUM)).governing());
  }

  @Test
  void oldCoatsAreTestedForLeadFirst() {
    DustRequest old =
        new DustRequest(
            GARAGE,
            DustSource.OLD_COAT_UNTESTED,
            0.01,
            3600,
            DustCapture.VACUUM,
            OptionalDouble.empty());
    assertTrue(refusals(old).get(0).remedy().pattern().contains("certified lead renovator"));
  }

  @Test
  void explosibleCloudIsRefused() {
    RoomAir booth = RoomAir.ofAirChanges(10, 1, 3, 20);
    assertFalse(refusals(bare(booth, 10, DustCapture.NONE)).isEmpty());
  }

  @Test
  void oilFilmDustHeatsItself() {
    DustRequest oil =
        new DustRequest(
            GARAGE, DustSource.OIL_FILM, 0.01, 3600, DustCapture.NONE, OptionalDouble.of(0.2));
    assertTrue(codes(oil).containsAll(List.of("finish-dust-fire", "dust-not-captured")));
  }

  @ParameterizedTest(name = "removed {0}, time {1}, airborne {2}, volume {3}")
  @CsvSource({
    "-1, 3600, 0.1, 60",
    "0, 3600, 0.1, 60",
    "NaN, 3600, 0.1, 60",
    "Infinity, 3600, 0.1, 60",
    "0.1, 0, 0.1, 60",
    "0.1, -5, 0.1, 60",
    "0.1, NaN, 0.1, 60",
    "0.1, 3600, -0.1, 60",
    "0.1, 3600, 1.1, 60",
    "0.1, 3600, NaN, 60",
    "0.1, 3600, 0.1, 0",
    "0.1, 3600, 0.1, NaN"
  })
  void nonsense(double kilogram, double second, double airborne, double volume) {
    DustRequest request =
        new DustRequest(
            RoomAir.ofAirChanges(volume, 4, 3, 20),
            DustSource.BARE_WOOD,
            kilogram,
            second,
            DustCapture.NONE,
            OptionalDouble.of(airborne));
    assertFalse(refusals(request).isEmpty());
  }

  @Test
  void nullIsNamed() {
    assertThrows(NullPointerException.class, () -> Dust.plan(null));
  }
}
