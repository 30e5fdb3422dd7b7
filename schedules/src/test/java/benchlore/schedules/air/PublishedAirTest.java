package benchlore.schedules.air;

import static org.junit.jupiter.api.Assertions.assertEquals;

import benchlore.schedules.material.ApplicationMethod;
import benchlore.schedules.material.Solvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The rules against published figures, a row a test. */
class PublishedAirTest {
  private static final ReleaseCurve EVEN = new ReleaseCurve(1, 86_400, 1);

  static Stream<Published.Row> ppm() {
    return Published.rows("ppm.csv");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("ppm")
  void massConcentration(Published.Row row) {
    double mass = row.number("molar_mass_g") / 1000;
    double got = 1e6 * Vapour.kilogramPerCubicMetre(row.number("ppm"), mass, row.number("celsius"));
    assertEquals(row.number("mg_m3"), got, row.number("tolerance"));
  }

  static Stream<Published.Row> molarVolume() {
    return Published.rows("molar-volume.csv");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("molarVolume")
  void molarVolume(Published.Row row) {
    double got = 1000 * Vapour.molarVolume(row.number("celsius"));
    assertEquals(row.number("litre_per_mole"), got, row.number("tolerance"));
  }

  static Stream<Published.Row> dilutionFlow() {
    return Published.rows("dilution-flow.csv");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("dilutionFlow")
  void dilutionFlow(Published.Row row) {
    RoomAir room = new RoomAir(100, 1, row.number("mixing_factor"), row.number("celsius"));
    Solvent solvent =
        Solvents.invented("a", row.number("molar_mass_g"), row.number("limit_ppm"), 0);
    double day = 24 * row.number("litre_per_hour") * row.number("kg_per_litre");
    FlowNeeded flow =
        FlowNeeded.of(Exposure.of(room, List.of(even(solvent, day))), room, true, false);
    assertEquals(
        row.number("flow_m3_per_hour"),
        3600 * LimitScale.EXCURSION * flow.healthShort().orElseThrow(),
        row.number("tolerance"));
    assertEquals(
        row.number("flow_m3_per_hour"),
        3600 * flow.healthEightHour().orElseThrow(),
        row.number("tolerance"));
  }

  private static Release even(Solvent solvent, double kilogramADay) {
    List<Release.Share> shares = List.of(new Release.Share(solvent, 1));
    return new Release(0, kilogramADay, shares, ApplicationMethod.BRUSH, Optional.of(EVEN));
  }

  static Stream<Published.Row> buildUp() {
    return Published.rows("build-up.csv");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("buildUp")
  void buildUp(Published.Row row) {
    double volume = row.number("volume");
    double changes = row.number("flow_per_minute") / row.number("mixing_factor") / volume / 60;
    Emission emission = new Emission(0, row.number("generation_per_minute") * 1440, EVEN);
    double got = new MixedRoom(volume, changes).concentration(emission, 60 * row.number("minutes"));
    assertEquals(row.number("fraction_ppm"), 1e6 * got, row.number("tolerance"));
  }

  static Stream<Published.Row> explosive() {
    return Published.rows("explosive.csv");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("explosive")
  void shareOfTheExplosiveLimit(Published.Row row) {
    Solvent solvent = Solvents.invented("a", 100, 0, row.number("lower_limit_percent"));
    double percentAPpm = LimitScale.EXPLOSIVE.perPpm(solvent).orElseThrow();
    assertEquals(
        row.number("ppm"), row.number("share_percent") / percentAPpm, row.number("tolerance"));
  }

  static Stream<Published.Row> mixtureIndex() {
    return Published.rows("mixture-index.csv");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("mixtureIndex")
  void mixtureIndex(Published.Row row) {
    double index = 0;
    for (String term : row.text("terms").split(" ", -1)) {
      String[] pair = term.split(":", -1);
      Solvent solvent = Solvents.invented("a", 100, Double.parseDouble(pair[1]), 0);
      index += Double.parseDouble(pair[0]) * LimitScale.HEALTH.perPpm(solvent).orElseThrow();
    }
    assertEquals(row.number("index"), index, row.number("tolerance"));
  }

  static Stream<Published.Row> average() {
    return Published.rows("average.csv");
  }

  /** A well-flushed room follows the release, so stretches of even release are even stretches. */
  @ParameterizedTest(name = "{0}")
  @MethodSource("average")
  void eightHourAverage(Published.Row row) {
    RoomAir room = new RoomAir(10, 10, 1, 20);
    Solvent solvent = Solvents.invented("a", 100, 100, 0);
    double ppmOfOne = Vapour.ppm(1, 0.1, 20);
    double start = 0;
    List<Release> releases = new ArrayList<>();
    for (String term : row.text("terms").split(" ", -1)) {
      String[] pair = term.split(":", -1);
      double length = 3600 * Double.parseDouble(pair[0]);
      double kilogram = Double.parseDouble(pair[1]) / ppmOfOne * room.outdoorFlow() * length;
      List<Release.Share> shares = List.of(new Release.Share(solvent, 1));
      ReleaseCurve curve = new ReleaseCurve(1, length, 1);
      releases.add(
          new Release(start, kilogram, shares, ApplicationMethod.BRUSH, Optional.of(curve)));
      start += length;
    }
    double got = Exposure.of(room, releases).average(LimitScale.PPM, 0, 28_800);
    assertEquals(row.number("average_ppm"), got, row.number("tolerance"));
  }

  static Stream<Published.Row> decay() {
    return Published.rows("decay.csv");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("decay")
  void decayTest(Published.Row row) {
    double changes = row.number("flow_m3_per_hour") / row.number("volume") / 3600;
    assertEquals(
        row.number("half_life_hour") * 3600,
        Vapour.clearanceSecond(2, 1, changes),
        3600 * row.number("tolerance"));
  }

  static Stream<Published.Row> ovenAir() {
    return Published.rows("oven-air.csv");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("ovenAir")
  void freshAirForALitreOfSolvent(Published.Row row) {
    RoomAir room = new RoomAir(100, 1, 1, row.number("celsius"));
    Solvent solvent =
        Solvents.invented("a", row.number("molar_mass_g"), 0, row.number("lower_limit_percent"));
    Release litreADay = even(solvent, row.number("kg_per_litre"));
    FlowNeeded flow = FlowNeeded.of(Exposure.of(room, List.of(litreADay)), room, false, true);
    assertEquals(
        row.number("m3_per_litre"),
        86_400 * flow.fireQuarter().orElseThrow(),
        row.number("tolerance"));
  }

  static Stream<Published.Row> governingLimit() {
    return Published.rows("governing-limit.csv");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("governingLimit")
  void lowerLimitGoverns(Published.Row row) {
    ExposureLimit limit = ExposureLimit.of(Solvents.of(row.text("solvent"))).orElseThrow();
    assertEquals(row.number("ppm"), limit.ppm(), 0.006 * row.number("ppm"));
    assertEquals(ExposureLimit.Body.valueOf(row.text("body")), limit.body());
  }

  static Stream<Published.Row> dustLimits() {
    return Published.rows("dust-limits.csv");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("dustLimits")
  void dustLimit(Published.Row row) {
    double limit = DustLimit.valueOf(row.text("limit")).kilogramPerCubicMetre();
    assertEquals(row.number("mg_m3"), 1e6 * limit, 1e-9);
  }

  static Stream<Published.Row> respiratorFactors() {
    return Published.rows("respirator-factors.csv");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("respiratorFactors")
  void protectionFactor(Published.Row row) {
    Respirator respirator = Respirator.valueOf(row.text("respirator"));
    assertEquals(row.number("factor"), respirator.protectionFactor().orElseThrow());
  }

  static Stream<Published.Row> tank() {
    return Published.rows("tank.csv");
  }

  /** Next to no air, all let go at once: vapour volume over room volume. */
  @ParameterizedTest(name = "{0}")
  @MethodSource("tank")
  void vapourInAClosedTank(Published.Row row) {
    double vapour = row.number("gallons") * row.number("ft3_vapour_per_gallon");
    MixedRoom tank = new MixedRoom(row.number("volume_ft3"), 1e-7);
    Emission emission = new Emission(0, vapour, new ReleaseCurve(1, 1, 1));
    assertEquals(
        row.number("percent"), 100 * tank.concentration(emission, 1), row.number("tolerance"));
  }
}
