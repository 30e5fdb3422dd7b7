package benchlore.generator.drawing.bit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The exact words of what is wrong with a bit. */
class BitProblemsTest {
  private static BitGeometry bit(BitShape shape, double diameter, double length) {
    return BitGeometry.of(shape, diameter, length, 6.35);
  }

  private static void expect(BitGeometry bit, String... problems) {
    assertEquals(List.of(problems), BitGeometry.problems(bit));
  }

  @Test
  void samplesHaveNone() {
    SampleBits.all()
        .forEach((name, bit) -> assertEquals(List.of(), BitGeometry.problems(bit), name));
  }

  @ParameterizedTest
  @EnumSource(BitShape.class)
  void eachNeededParameterIsNamedWithItsShape(BitShape shape) {
    List<String> problems = BitGeometry.problems(bit(shape, 30, 20));
    for (BitParameter parameter : BitParameter.values()) {
      String message = parameter.key() + ": missing; " + shape.word() + " needs it";
      assertEquals(shape.needs(parameter), problems.contains(message), message);
    }
  }

  @ParameterizedTest
  @EnumSource(BitShape.class)
  void aWordFindsItsShape(BitShape shape) {
    assertEquals(shape, BitShape.parse(shape.word()).orElseThrow());
    assertTrue(BitShape.parse(shape.word() + "s").isEmpty());
  }

  @Test
  void badSizesAreAllListed() {
    expect(
        BitGeometry.of(BitShape.STRAIGHT, 0, Double.NaN, -3).withFlutes(0, FluteForm.UPCUT),
        "diameterMm: must be more than 0, is 0",
        "cuttingLengthMm: must be more than 0, is not a number",
        "shankMm: must be more than 0, is -3",
        "flutes: must be 1 to 12, is 0");
  }

  @Test
  void bearings() {
    expect(bit(BitShape.TRIM, 12, 25), "bearing: trim needs a bearing at tip, shank or both");
    expect(
        bit(BitShape.BALL, 12, 25).withBearing(BearingPlace.TIP, 9),
        "bearing: ball cuts with its tip, which leaves no room for a bearing there");
    expect(
        bit(BitShape.RABBET, 30, 12).withBearing(BearingPlace.TIP, 30),
        "bearingMm: rabbet needs a bearing smaller than its diameter");
    expect(
        bit(BitShape.STRAIGHT, 12, 25).withBearing(BearingPlace.NONE, 9),
        "bearingMm: given, but bearing is none");
    expect(bit(BitShape.SLOT, 40, 6), "depthMm: missing; slot needs it where there is no bearing");
  }

  @Test
  void idleAndContradictingMeasures() {
    expect(
        bit(BitShape.STRAIGHT, 12, 25).withAngleDegrees(45),
        "angleDegrees: given, but straight has no use for it");
    expect(
        bit(BitShape.BALL, 12, 25).withRadiusMm(5),
        "radiusMm: must be half the diameter for ball, is 5");
    expect(
        bit(BitShape.RABBET, 30, 12).withBearing(BearingPlace.TIP, 10).withDepthMm(8),
        "depthMm: is 8, but diameter and bearing leave 10");
    expect(
        bit(BitShape.KEYHOLE, 10, 4).withTipMm(5).withDepthMm(3),
        "depthMm: keyhole must reach deeper than its head of 4");
  }

  @Test
  void formsThatDoNotFit() {
    expect(
        bit(BitShape.ROUND_OVER, 30, 13).withRadiusMm(9.5).withBearing(BearingPlace.TIP, 12.7),
        "diameterMm: round-over of these measures needs at least 31.7, is 30");
    expect(
        bit(BitShape.V, 25.4, 10).withAngleDegrees(90),
        "cuttingLengthMm: v of these measures needs at least 12.7, is 10");
    expect(
        bit(BitShape.DOVETAIL, 12.7, 12.7).withAngleDegrees(90),
        "angleDegrees: dovetail takes less than 90 from the axis, is 90");
    expect(
        bit(BitShape.V, 12.7, 12.7).withAngleDegrees(180),
        "angleDegrees: v takes less than 180 included, is 180");
    expect(
        bit(BitShape.THUMBNAIL, 40, 20)
            .withRadiusMm(8)
            .withStepMm(2)
            .withBearing(BearingPlace.TIP, 12),
        "radiusMm: thumbnail needs a radius of at least 14 to cross from the bearing to its full"
            + " diameter");
  }

  @Test
  void drawingRefusesWithTheSameWords() {
    BitGeometry bad = bit(BitShape.COVE, 28, 12);
    var refusal = assertThrows(IllegalArgumentException.class, () -> Bits.bit(bad, "cove", "p"));
    assertEquals("radiusMm: missing; cove needs it", refusal.getMessage());
    assertThrows(
        IllegalArgumentException.class, () -> Bits.bit(SampleBits.all().get("v"), "v", "1 bad id"));
  }
}
