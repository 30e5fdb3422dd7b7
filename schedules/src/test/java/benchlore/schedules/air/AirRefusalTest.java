package benchlore.schedules.air;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Refusal;
import benchlore.schedules.material.ApplicationMethod;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class AirRefusalTest {
  private static final RoomAir GARAGE = new RoomAir(90, 0.5, 3, 20);

  private static Release coat(String solvent, double kilogram, ApplicationMethod method) {
    List<Release.Share> shares = List.of(new Release.Share(Solvents.of(solvent), 1));
    return new Release(0, kilogram, shares, method, Optional.empty());
  }

  private static List<Refusal> refusals(AirRequest request) {
    return Air.plan(request).fold(given -> List.of(), Answer.Refused::reasons);
  }

  private static AirRequest with(Release release, IgnitionSource... sources) {
    return new AirRequest(GARAGE, List.of(release), List.of(sources), false, false, false);
  }

  private static void assertToldInstead(List<Refusal> refusals, String input, String instead) {
    assertTrue(
        refusals.stream()
            .anyMatch(r -> r.input().equals(input) && r.remedy().pattern().contains(instead)),
        () -> "no refusal of " + input + " saying " + instead + " in " + refusals);
  }

  @ParameterizedTest(name = "volume {0}, flow {1}, K {2}, {3} C")
  @CsvSource({
    "-1, 0.5, 3, 20",
    "0, 0.5, 3, 20",
    "NaN, 0.5, 3, 20",
    "Infinity, 0.5, 3, 20",
    "90, 0, 3, 20",
    "90, -0.5, 3, 20",
    "90, NaN, 3, 20",
    "90, 0.5, 0, 20",
    "90, 0.5, 0.2, 20",
    "90, 0.5, NaN, 20",
    "90, 0.5, 3, 500",
    "90, 0.5, 3, -300",
    "90, 0.5, 3, NaN",
    "100000, 0.00001, 10, 20"
  })
  void nonsenseRoom(double volume, double flow, double k, double celsius) {
    RoomAir room = new RoomAir(volume, flow, k, celsius);
    Release release = coat("ethanol", 0.1, ApplicationMethod.WIPE);
    assertFalse(
        refusals(new AirRequest(room, List.of(release), List.of(), false, false, false)).isEmpty());
  }

  @ParameterizedTest(name = "start {0}, mass {1}, share {2}, quick {3} in {4} s, decay {5} s")
  @CsvSource({
    "-1, 0.1, 1, 0.5, 600, 3600",
    "NaN, 0.1, 1, 0.5, 600, 3600",
    "0, 0, 1, 0.5, 600, 3600",
    "0, -0.1, 1, 0.5, 600, 3600",
    "0, NaN, 1, 0.5, 600, 3600",
    "0, Infinity, 1, 0.5, 600, 3600",
    "0, 0.1, 1.5, 0.5, 600, 3600",
    "0, 0.1, -0.5, 0.5, 600, 3600",
    "0, 0.1, NaN, 0.5, 600, 3600",
    "0, 0.1, 1, 1.5, 600, 3600",
    "0, 0.1, 1, NaN, 600, 3600",
    "0, 0.1, 1, 0.5, 0, 3600",
    "0, 0.1, 1, 0.5, 600, -1",
    "0, 0.1, 1, 0.5, 600, Infinity"
  })
  void nonsenseCoat(double start, double kg, double share, double q, double f, double tau) {
    List<Release.Share> shares = List.of(new Release.Share(Solvents.of("ethanol"), share));
    ReleaseCurve curve = new ReleaseCurve(q, f, tau);
    assertFalse(
        refusals(with(new Release(start, kg, shares, ApplicationMethod.BRUSH, Optional.of(curve))))
            .isEmpty());
  }

  @Test
  void noCoats() {
    assertFalse(
        refusals(new AirRequest(GARAGE, List.of(), List.of(), false, false, false)).isEmpty());
  }

  @Test
  void everyReasonAtOnce() {
    RoomAir room = new RoomAir(-1, 0, 99, Double.NaN);
    Release release = coat("methylene chloride", -1, ApplicationMethod.SPRAY);
    List<IgnitionSource> sources = List.of(IgnitionSource.UNVENTED_FUEL_HEATER);
    assertTrue(
        refusals(new AirRequest(room, List.of(release), sources, true, false, false)).size() >= 8);
  }

  @Test
  void sprayedIsocyanatesGoToALicensedShop() {
    Release spray = coat("n-butyl acetate", 0.01, ApplicationMethod.SPRAY);
    AirRequest request = new AirRequest(GARAGE, List.of(spray), List.of(), true, false, false);
    assertToldInstead(refusals(request), "isocyanate", "licensed finishing shop with supplied air");
  }

  @Test
  void brushedIsocyanatesGetSuppliedAirNeverACartridge() {
    Release brush = coat("n-butyl acetate", 0.01, ApplicationMethod.BRUSH);
    AirRequest request = new AirRequest(GARAGE, List.of(brush), List.of(), true, false, false);
    var given = assertInstanceOf(Answer.Given.class, Air.plan(request));
    assertTrue(((AirSchedule) given.value()).respirator().respirator() == Respirator.SUPPLIED_AIR);
  }

  @Test
  void methyleneChloride() {
    Release strip = coat("methylene chloride", 0.01, ApplicationMethod.BRUSH);
    assertToldInstead(refusals(with(strip)), "releases.shares", "licensed stripping shop");
  }

  @ParameterizedTest
  @EnumSource(names = {"PILOT_LIGHT", "OPEN_ELEMENT_HEATER", "WELDING_OR_GRINDING", "SMOKING"})
  void flameWithFlammableVapour(IgnitionSource source) {
    Release wipe = coat("ethanol", 0.01, ApplicationMethod.WIPE);
    assertToldInstead(refusals(with(wipe, source)), "ignitionSources", "Shut it off");
  }

  @Test
  void flameWithASolventOfWhichNothingIsKnown() {
    Release wipe = coat("Stoddard solvent (mineral spirits)", 0.01, ApplicationMethod.WIPE);
    assertToldInstead(
        refusals(with(wipe, IgnitionSource.PILOT_LIGHT)), "ignitionSources", "Shut it off");
  }

  @Test
  void waterborneFinishesMayStandByAPilotLightWithACaution() {
    List<Release.Share> shares = List.of(new Release.Share(Solvents.of("2-butoxyethanol"), 0.08));
    Release water = new Release(0, 0.05, shares, ApplicationMethod.BRUSH, Optional.empty());
    List<String> codes =
        Air.plan(with(water, IgnitionSource.PILOT_LIGHT))
            .fold(g -> g.cautions().stream().map(c -> c.code()).toList(), r -> List.of());
    assertTrue(codes.contains("mist-and-rags-burn"), codes::toString);
  }

  @Test
  void unventedHeaterEvenWithoutFlammableVapour() {
    Release water = new Release(0, 0.1, List.of(), ApplicationMethod.BRUSH, Optional.empty());
    assertToldInstead(
        refusals(with(water, IgnitionSource.UNVENTED_FUEL_HEATER)), "ignitionSources", "flue");
  }

  @ParameterizedTest
  @EnumSource(names = {"BRUSHED_MOTOR", "UNRATED_ELECTRICAL"})
  void sparksWithFlammableSpray(IgnitionSource source) {
    Release spray = coat("ethanol", 0.01, ApplicationMethod.SPRAY);
    assertToldInstead(refusals(with(spray, source)), "ignitionSources", "brush or wipe");
    assertInstanceOf(
        Answer.Given.class, Air.plan(with(coat("ethanol", 0.01, ApplicationMethod.WIPE), source)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"acetone", "toluene", "ethanol", "turpentine"})
  void tooMuchForTheRoom(String solvent) {
    AirRequest request = with(coat(solvent, 20, ApplicationMethod.BRUSH));
    assertToldInstead(refusals(request), "room.outdoorFlow", "outdoor air");
  }

  @Test
  void nullsAreNamed() {
    assertThrows(NullPointerException.class, () -> Air.plan(null));
    assertThrows(
        NullPointerException.class,
        () -> new AirRequest(null, List.of(), List.of(), false, false, false));
    assertThrows(IllegalArgumentException.class, () -> Solvents.invented("", 100, 100, 1));
  }
}
