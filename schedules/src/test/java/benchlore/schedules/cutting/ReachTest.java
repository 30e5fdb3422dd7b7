package benchlore.schedules.cutting;

import static benchlore.schedules.cutting.CutTables.codes;
import static benchlore.schedules.cutting.CutTables.value;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.cutting.Bit.Bearing;
import benchlore.schedules.cutting.Bit.Bearing.Seat;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReachTest {
  private static ReachRequest plain(Bit bit, double depth) {
    return new ReachRequest(bit, depth, 0.024, 0, OptionalDouble.empty(), 0.003);
  }

  private static Bit pattern(double edges, double bearingDiameter) {
    return Bit.plain(0.012, 2, edges, 0.00635)
        .withBearing(new Bearing(Seat.SHANK, bearingDiameter, 0.005));
  }

  private static ReachRequest template(Bit bit, double depth, double template) {
    return new ReachRequest(bit, depth, 0.02, 0, OptionalDouble.of(template), 0.003);
  }

  @Test
  void ordinaryBitReaches() {
    Reach reach = value(Cutting.plan(plain(CutTables.quarter(), 0.019)));
    assertTrue(reach.reaches(), reach.problems()::toString);
    assertEquals(0.028, reach.stickOutMetre(), 1e-12);
    assertEquals(0.029, reach.gripMetre(), 1e-12);
  }

  /** Maker's sheet: three quarters of the shank. Spindle note: four fifths of the bore. */
  @ParameterizedTest
  @CsvSource({"0.032, 0.024, 0.024", "0.032, 0.032, 0.0256", "0.020, 0.024, 0.0192"})
  void gripIsThePublishedShare(double shank, double collet, double grip) {
    Bit bit =
        new Bit(0.006, 2, 0.02, 0.006, shank, OptionalDouble.empty(), java.util.Optional.empty());
    Reach reach =
        value(Cutting.plan(new ReachRequest(bit, 0.01, collet, 0, OptionalDouble.empty(), 0.003)));
    assertEquals(grip, reach.neededGripMetre(), 1e-12);
  }

  @Test
  void pullingTheBitOutToReachIsForbidden() {
    ReachRequest far =
        new ReachRequest(CutTables.quarter(), 0.02, 0.024, 0.03, OptionalDouble.empty(), 0.003);
    assertFalse(value(Cutting.plan(far)).reaches());
    assertTrue(codes(Cutting.plan(far)).contains("bit-out-too-far"));
  }

  @Test
  void fatShankStopsADeepCutThinShankOnlyWarns() {
    Bit fat = Bit.plain(0.003, 2, 0.010, 0.006);
    Bit thin = Bit.plain(0.010, 2, 0.010, 0.006);
    assertFalse(value(Cutting.plan(plain(fat, 0.012))).reaches());
    assertTrue(value(Cutting.plan(plain(thin, 0.012))).reaches());
    assertTrue(codes(Cutting.plan(plain(thin, 0.012))).contains("shank-in-the-cut"));
  }

  @Test
  void longEdgesHangTheBearingAboveAThinTemplate() {
    Bit longEdges = pattern(0.025, 0.012);
    assertFalse(value(Cutting.plan(template(longEdges, 0.019, 0.012))).reaches());
    assertTrue(value(Cutting.plan(template(longEdges, 0.019, 0.025))).reaches());
    assertTrue(value(Cutting.plan(template(pattern(0.012, 0.012), 0.012, 0.012))).reaches());
  }

  @Test
  void bearingSmallerThanBitEatsTheTemplateLargerLeavesALedge() {
    assertFalse(value(Cutting.plan(template(pattern(0.012, 0.0095), 0.012, 0.012))).reaches());
    ReachRequest larger = template(pattern(0.012, 0.016), 0.012, 0.012);
    assertTrue(value(Cutting.plan(larger)).reaches());
    assertTrue(codes(Cutting.plan(larger)).contains("bearing-larger-than-bit"));
  }

  @Test
  void flushTrimBitMustCoverTheWholeEdge() {
    Bit flush =
        Bit.plain(0.0127, 2, 0.0254, 0.0127).withBearing(new Bearing(Seat.TIP, 0.0127, 0.005));
    assertTrue(value(Cutting.plan(template(flush, 0.019, 0.012))).reaches());
    assertFalse(value(Cutting.plan(template(flush, 0.030, 0.012))).reaches());
    assertFalse(value(Cutting.plan(template(flush, 0.019, 0.0025))).reaches());
  }

  @ParameterizedTest
  @CsvSource({
    "NaN, 0.024, 0, 0.003",
    "0.01, -1, 0, 0.003",
    "0.01, 0.024, Infinity, 0.003",
    "0.01, 0.024, 0, 0",
    "0, 0.024, 0, 0.003"
  })
  void refusesNonsense(double depth, double collet, double nose, double first) {
    assertInstanceOf(
        Answer.Refused.class,
        Cutting.plan(
            new ReachRequest(
                CutTables.quarter(), depth, collet, nose, OptionalDouble.empty(), first)));
  }

  @Test
  void bearingWithoutTemplateIsRefused() {
    assertInstanceOf(Answer.Refused.class, Cutting.plan(plain(pattern(0.012, 0.012), 0.012)));
  }

  @Property(tries = 200)
  boolean deeperNeverReachesMore(
      @ForAll @Scale(4) @DoubleRange(min = 0.001, max = 0.1) double depth) {
    Reach shallow = value(Cutting.plan(plain(CutTables.quarter(), depth)));
    Reach deep = value(Cutting.plan(plain(CutTables.quarter(), depth + 0.005)));
    return (shallow.reaches() || !deep.reaches()) && deep.gripMetre() <= shallow.gripMetre();
  }
}
