package benchlore.schedules.cutting;

import static benchlore.schedules.cutting.CutTables.INCH;
import static benchlore.schedules.cutting.CutTables.codes;
import static benchlore.schedules.cutting.CutTables.cut;
import static benchlore.schedules.cutting.CutTables.hand;
import static benchlore.schedules.cutting.CutTables.light;
import static benchlore.schedules.cutting.CutTables.quarter;
import static benchlore.schedules.cutting.CutTables.rigid;
import static benchlore.schedules.cutting.CutTables.table;
import static benchlore.schedules.cutting.CutTables.value;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.cutting.CuttingRequest.Side;
import benchlore.schedules.cutting.CuttingRequest.Trim;
import benchlore.schedules.cutting.CuttingSchedule.Direction.Turn;
import benchlore.schedules.quantity.SourcedRange;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class CuttingTest {
  @ParameterizedTest(name = "{0} rpm x {1} x {2} m = {3} m/min within {4}: {5} [{6}]")
  @CsvFileSource(resources = "/published/cutting/feed.csv", numLinesToSkip = 1)
  void feedMeetsWorkedExample(
      double rpm, double flutes, double chip, double perMinute, double tolerance) {
    assertEquals(perMinute, CuttingPlan.feedMetrePerSecond(rpm, flutes, chip) * 60, tolerance);
  }

  @ParameterizedTest(name = "{0} m at {1} rpm = {2} m/s within {3}: {4} [{5}]")
  @CsvFileSource(resources = "/published/cutting/rim-speed.csv", numLinesToSkip = 1)
  void rimSpeedMeetsWorkedExample(
      double diameter, double rpm, double metrePerSecond, double tolerance) {
    assertEquals(metrePerSecond, BitSpeeds.rimMetrePerSecond(diameter, rpm), tolerance);
  }

  @ParameterizedTest(name = "{0} m: {1} rpm, most cautious {2}: {3} [{4}]")
  @CsvFileSource(resources = "/published/cutting/highest-speed.csv", numLinesToSkip = 1)
  void highestSpeedIsTheMostCautiousChart(double diameter, double rpm, String cautious) {
    double ours = BitSpeeds.highestRpm(diameter);
    assertTrue(ours <= rpm);
    if (cautious.equals("yes")) {
      assertEquals(rpm, ours);
    }
  }

  @ParameterizedTest(name = "{0} m starts at {1} rpm: {2} [{3}]")
  @CsvFileSource(resources = "/published/cutting/start-speed.csv", numLinesToSkip = 1)
  void startingSpeedMeetsItsChartAndStaysUnderTheHighest(double diameter, double rpm) {
    assertEquals(rpm, BitSpeeds.startRpm(diameter));
    assertTrue(rpm <= BitSpeeds.highestRpm(diameter));
  }

  @ParameterizedTest(name = "{0} {1} m: {2} to {3} m: {4} [{5}]")
  @CsvFileSource(resources = "/published/cutting/chip-load.csv", numLinesToSkip = 1)
  void chipLoadIsTheLowerOfTheTables(CutMaterial stock, double diameter, double low, double high) {
    SourcedRange ours = ChipLoads.of(stock, diameter);
    assertTrue(ours.low() <= low + 1e-12, "low");
    assertTrue(ours.high() <= high + 1e-12, "high");
    assertTrue(ours.high() >= 0.5 * high, "not far below the table either");
  }

  /** Each end of our range is printed in one of the tables, not made up. */
  @ParameterizedTest
  @CsvSource({
    "SOFTWOOD, 0.25, 0.010, 0.013",
    "HARDWOOD, 0.25, 0.005, 0.010",
    "MDF, 0.25, 0.013, 0.016",
    "PLYWOOD, 0.25, 0.010, 0.013",
    "HARDWOOD, 0.375, 0.015, 0.018",
    "SOFTWOOD, 0.5, 0.021, 0.023",
    "HARDWOOD, 0.125, 0.0025, 0.005",
    "MDF, 0.5, 0.025, 0.027"
  })
  void chipLoadAtPrintedDiameters(CutMaterial stock, double inches, double low, double high) {
    SourcedRange ours = ChipLoads.of(stock, inches * INCH);
    assertEquals(low * INCH, ours.low(), 1e-12);
    assertEquals(high * INCH, ours.high(), 1e-12);
  }

  @ParameterizedTest(name = "{0} D: {1} to {2} of the chip load: {3} [{4}]")
  @CsvFileSource(resources = "/published/cutting/deep-cut.csv", numLinesToSkip = 1)
  void deepCutsTakeThinnerChips(double diameters, double low, double high) {
    double share = CuttingPlan.depthShare(diameters);
    assertTrue(share >= low - 1e-12 && share <= high + 1e-12);
  }

  /** Router manuals: 19 mm deep at no more than 1/8 in a pass takes six. */
  @Test
  void handRouterTakesSixPassesForNineteenMillimetres() {
    CuttingSchedule schedule = value(Cutting.plan(cut(hand())));
    assertEquals(6, schedule.passes().depthPasses());
    assertEquals(0.019 / 6, schedule.passes().depthMetre(), 1e-12);
  }

  @Test
  void rigidMachineAtEighteenThousand() {
    CuttingSchedule schedule = value(Cutting.plan(cut(rigid()).withRpm(18_000)));
    assertEquals(18_000, schedule.speed().rpm());
    assertEquals(18_000 * 2 * 0.005 * INCH / 60, schedule.feed().lowMetrePerSecond(), 1e-12);
    assertEquals(18_000 * 2 * 0.010 * INCH / 60, schedule.feed().highMetrePerSecond(), 1e-12);
    assertEquals(3, schedule.passes().depthPasses());
  }

  @Test
  void slowMachineTurnsSlowerInsteadOfRubbing() {
    CuttingSchedule schedule = value(Cutting.plan(cut(light())));
    assertTrue(schedule.speed().rpm() < 24_000);
    assertEquals(0.05, schedule.feed().lowMetrePerSecond(), 1e-9);
    assertEquals(0.0025 * INCH, schedule.feed().lowChipMetre(), 1e-9);
  }

  @Test
  void rubbingIsWarnedOf() {
    Machine crawling = new Machine(Machine.Kind.LIGHT_CNC, 20_000, 24_000, 0.01);
    assertTrue(codes(Cutting.plan(cut(crawling))).contains("bit-rubs"));
  }

  @Test
  void markingOnTheBitWinsWhenLower() {
    CuttingRequest request =
        CuttingRequest.of(
            CutMaterial.HARDWOOD,
            Bit.plain(0.012, 2, 0.02, 0.008).withMarkedRpm(14_000),
            hand(),
            Side.SLOT,
            0.01);
    CuttingSchedule schedule = value(Cutting.plan(request));
    assertEquals(14_000, schedule.speed().highestRpm());
    assertEquals(14_000, schedule.speed().rpm());
    CuttingRequest generous =
        CuttingRequest.of(
            CutMaterial.HARDWOOD,
            Bit.plain(2 * INCH, 2, 0.02, 0.0127).withMarkedRpm(30_000),
            hand(),
            Side.SLOT,
            0.01);
    assertEquals(18_000, value(Cutting.plan(generous)).speed().highestRpm());
  }

  /** Router operator manuals: counter-clockwise outside, clockwise inside, guide at the right. */
  @ParameterizedTest
  @CsvSource({
    "OUTSIDE_EDGE, COUNTER_CLOCKWISE, WORK_RIGHT_TO_LEFT",
    "INSIDE_EDGE, CLOCKWISE, BIT_COUNTER_CLOCKWISE_INSIDE",
    "SLOT, GUIDE_ON_RIGHT, WORK_RIGHT_TO_LEFT"
  })
  void directionFollowsTheManuals(Side side, Turn byHand, Turn onTable) {
    assertEquals(byHand, Directions.of(Machine.Kind.HAND_ROUTER, side).turn());
    assertEquals(byHand, Directions.of(Machine.Kind.RIGID_CNC, side).turn());
    assertEquals(onTable, Directions.of(Machine.Kind.ROUTER_TABLE, side).turn());
  }

  @Test
  void cautionsStandWithTheCut() {
    assertTrue(codes(Cutting.plan(cut(hand()))).contains("climb-cut"));
    assertTrue(codes(Cutting.plan(cut(table()))).contains("climb-cut"));
    assertTrue(codes(Cutting.plan(cut(rigid()))).contains("climb-cut-only-held"));
    CuttingRequest large =
        CuttingRequest.of(
            CutMaterial.MDF,
            Bit.plain(0.05, 2, 0.01, 0.0127),
            new Machine(Machine.Kind.HAND_ROUTER, 8000, 24_000, 0.1),
            Side.OUTSIDE_EDGE,
            0.02);
    List<String> codes = codes(Cutting.plan(large));
    assertTrue(
        codes.containsAll(List.of("large-bit-in-table-only", "mdf-dust", "deeper-than-edges")));
  }

  @Test
  void trimOfThreeSixteenthsTakesThreeBites() {
    CuttingSchedule.Passes passes =
        value(Cutting.plan(cut(hand()).withTrim(new Trim(3 * Trim.USUAL_BITE_METRE, 0.0015875))))
            .passes();
    assertEquals(3, passes.trimPasses());
    assertEquals(18, passes.all());
  }

  static Stream<CuttingRequest> nonsense() {
    List<CuttingRequest> all = new ArrayList<>();
    for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY, -1, 0, 1e9}) {
      all.add(CuttingRequest.of(CutMaterial.MDF, quarter(), hand(), Side.SLOT, bad));
      all.add(cut(hand()).withTrim(new Trim(0.001, bad)));
      all.add(cut(hand()).withRpm(bad));
      all.add(cut(rigid()).withPass(bad));
      all.add(cut(new Machine(Machine.Kind.HAND_ROUTER, bad, 24_000, 0.1)));
      all.add(cut(new Machine(Machine.Kind.RIGID_CNC, 8000, 24_000, bad)));
      all.add(
          CuttingRequest.of(
              CutMaterial.MDF, Bit.plain(bad, 2, 0.02, 0.006), hand(), Side.SLOT, 0.01));
    }
    all.add(cut(hand()).withTrim(new Trim(-0.001, 0.001)));
    all.add(cut(hand()).withPass(0.006));
    all.add(cut(rigid()).withPass(0.02));
    all.add(cut(hand()).withRpm(30_000));
    all.add(cut(hand()).withRpm(7000));
    all.add(
        CuttingRequest.of(
                CutMaterial.MDF, Bit.plain(0.05, 2, 0.02, 0.0127), hand(), Side.SLOT, 0.01)
            .withRpm(20_000));
    all.add(cut(new Machine(Machine.Kind.HAND_ROUTER, 24_000, 8000, 0.1)));
    all.add(
        CuttingRequest.of(
            CutMaterial.MDF, Bit.plain(0.006, 0, 0.02, 0.006), hand(), Side.SLOT, 0.01));
    all.add(
        CuttingRequest.of(
            CutMaterial.MDF,
            Bit.plain(0.08, 2, 0.02, 0.0127),
            new Machine(Machine.Kind.ROUTER_TABLE, 22_000, 22_000, 0.1),
            Side.SLOT,
            0.01));
    return all.stream();
  }

  @ParameterizedTest
  @MethodSource("nonsense")
  void refusesNonsense(CuttingRequest request) {
    assertInstanceOf(Answer.Refused.class, Cutting.plan(request));
  }

  @Property(tries = 200)
  boolean feedIsLinear(
      @ForAll @DoubleRange(min = 1000, max = 30_000) double rpm,
      @ForAll @IntRange(min = 1, max = 8) int flutes,
      @ForAll @Scale(6) @DoubleRange(min = 0.00001, max = 0.0005) double chip) {
    double once = CuttingPlan.feedMetrePerSecond(rpm, flutes, chip);
    return once > 0
        && CuttingPlan.feedMetrePerSecond(2 * rpm, flutes, chip) == 2 * once
        && CuttingPlan.feedMetrePerSecond(rpm, 2 * flutes, chip) == 2 * once
        && CuttingPlan.feedMetrePerSecond(rpm, flutes, 2 * chip) == 2 * once;
  }

  @Property(tries = 200)
  boolean largerBitsNeverTurnFasterAndRimStaysUnderFortyEight(
      @ForAll @Scale(5) @DoubleRange(min = 0.001, max = 0.088) double diameter) {
    double rpm = BitSpeeds.highestRpm(diameter);
    return BitSpeeds.highestRpm(diameter + 0.0005) <= rpm
        && BitSpeeds.startRpm(diameter) <= rpm
        && BitSpeeds.rimMetrePerSecond(diameter, rpm) < 48;
  }

  @Property(tries = 200)
  boolean largerBitsTakeThickerChips(
      @ForAll CutMaterial stock,
      @ForAll @Scale(5) @DoubleRange(min = 0.001, max = 0.05) double diameter) {
    SourcedRange small = ChipLoads.of(stock, diameter);
    SourcedRange large = ChipLoads.of(stock, diameter + 0.0005);
    return small.low() > 0 && large.low() >= small.low() && large.high() >= small.high();
  }

  @Property(tries = 200)
  boolean passesNeverTakeMoreThanTheBiteAndLeaveNothing(
      @ForAll @Scale(5) @DoubleRange(min = 0, max = 0.05) double left,
      @ForAll @Scale(5) @DoubleRange(min = 0.0001, max = 0.01) double bite,
      @ForAll @Scale(4) @DoubleRange(min = 0.0001, max = 0.15) double depth) {
    CuttingSchedule.Passes passes =
        value(
                Cutting.plan(
                    CuttingRequest.of(
                            CutMaterial.PLYWOOD, quarter(), hand(), Side.INSIDE_EDGE, depth)
                        .withTrim(new Trim(left, bite))))
            .passes();
    return passes.biteMetre() <= bite
        && Math.abs(passes.biteMetre() * passes.trimPasses() - left) < 1e-8
        && passes.depthMetre() <= CuttingFigures.HAND_PASS_METRE + 1e-9
        && Math.abs(passes.depthMetre() * passes.depthPasses() - depth) < 1e-9;
  }

  @Property(tries = 200)
  boolean speedNeverExceedsTheLimitAndFeedIsInOrder(
      @ForAll CutMaterial stock,
      @ForAll @Scale(5) @DoubleRange(min = 0.001, max = 0.0889) double diameter,
      @ForAll @IntRange(min = 1, max = 4) int flutes) {
    CuttingSchedule schedule =
        value(
            Cutting.plan(
                CuttingRequest.of(
                    stock, Bit.plain(diameter, flutes, 0.02, 0.006), rigid(), Side.SLOT, 0.012)));
    return schedule.speed().rpm() <= schedule.speed().highestRpm()
        && schedule.feed().lowMetrePerSecond() > 0
        && schedule.feed().lowMetrePerSecond() <= schedule.feed().highMetrePerSecond()
        && schedule.feed().highMetrePerSecond() <= 1.5;
  }
}
