package benchlore.schedules.air;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Refusal;
import benchlore.schedules.material.SprayGun;
import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;
import java.util.List;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MistTest {
  private static final RoomAir GARAGE = RoomAir.ofAirChanges(90, 6, 3, 20);

  /** Liquid that holds so many kilograms of solids. */
  private static MistRequest.Sprayed sprayed(double solidsKilogram) {
    double cubicMetre = solidsKilogram / Mist.DRY_FILM.mid() / 0.4;
    return new MistRequest.Sprayed(
        cubicMetre,
        SourcedRange.range(30, 40, Unit.PERCENT, Provenance.fromMemory("an invented lacquer")));
  }

  private static MistEstimate given(MistRequest request) {
    return Mist.plan(request)
        .fold(
            Answer.Given::value,
            refused -> {
              throw new AssertionError(refused.reasons());
            });
  }

  private static List<Refusal> refusals(MistRequest request) {
    return Mist.plan(request).fold(g -> List.of(), Answer.Refused::reasons);
  }

  @Property(tries = 200)
  void massIsKeptAndClearIsDownToTheLimit(
      @ForAll @DoubleRange(min = 0.01, max = 5) double kilogram, @ForAll SprayGun gun) {
    MistEstimate m =
        given(new MistRequest(GARAGE, gun, sprayed(kilogram), 600, OptionalDouble.empty(), false));
    assertEquals(kilogram, m.landedKilogram() + m.mistKilogram(), 1e-12);
    Emission emission = new Emission(0, m.mistKilogram(), new ReleaseCurve(1, 600, 1));
    double then = MixedRoom.of(GARAGE).concentration(emission, 600 + m.clearSecond());
    assertTrue(then <= 5e-6 * (1 + 1e-9));
  }

  @Test
  void betterGunsLeaveLessMist() {
    double hvlp =
        given(
                new MistRequest(
                    GARAGE, SprayGun.HVLP, sprayed(0.1), 600, OptionalDouble.empty(), false))
            .mistKilogram();
    double cup =
        given(
                new MistRequest(
                    GARAGE, SprayGun.CUP_GUN, sprayed(0.1), 600, OptionalDouble.empty(), false))
            .mistKilogram();
    assertEquals(0.05, hvlp, 1e-12);
    assertTrue(cup > hvlp);
  }

  @Test
  void isocyanatesAreRefused() {
    MistRequest request =
        new MistRequest(GARAGE, SprayGun.AIRLESS, sprayed(0.1), 600, OptionalDouble.empty(), true);
    assertTrue(refusals(request).get(0).remedy().pattern().contains("licensed finishing shop"));
  }

  @ParameterizedTest(name = "solids {0}, time {1}, volume {2}")
  @CsvSource({
    "-1, 600, 90",
    "0, 600, 90",
    "NaN, 600, 90",
    "0.1, 0, 90",
    "0.1, NaN, 90",
    "0.1, 600, -90"
  })
  void nonsense(double kilogram, double second, double volume) {
    RoomAir room = RoomAir.ofAirChanges(volume, 6, 3, 20);
    assertFalse(
        refusals(
                new MistRequest(
                    room,
                    SprayGun.AIRLESS,
                    sprayed(kilogram),
                    second,
                    OptionalDouble.empty(),
                    false))
            .isEmpty());
  }

  @Test
  void nullIsNamed() {
    assertThrows(NullPointerException.class, () -> Mist.plan(null));
  }
}
