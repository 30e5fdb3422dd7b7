package benchlore.generator.drawing.bit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** Areas of cuts against the textbook's formulas. */
class CutAreaTest {
  private static double removed(String sample) {
    return Form.of(SampleBits.all().get(sample)).removed().area();
  }

  @Test
  void aStraightBitTakesARectangle() {
    Form form = Form.of(SampleBits.all().get("straight"));
    assertEquals(12.7 * form.faceMm(), form.removed().area(), 1e-9);
  }

  @Test
  void aVBitTakesATriangle() {
    Form form = Form.of(SampleBits.all().get("v-60"));
    double depth = form.faceMm();
    assertEquals(depth * depth * Math.tan(Math.PI / 6), form.removed().area(), 1e-9);
  }

  @Test
  void aRoundOverTakesTheSquareLessTheQuarterCircle() {
    assertEquals(9.5 * 9.5 * (1 - Math.PI / 4), removed("round-over"), 1e-9);
  }

  @Test
  void aCoveTakesTheQuarterCircle() {
    Form exact =
        Form.of(
            BitGeometry.of(BitShape.COVE, 28.5, 12.7, 6.35)
                .withRadiusMm(9.5)
                .withBearing(BearingPlace.TIP, 9.5));
    assertEquals(9.5 * 9.5 * Math.PI / 4, exact.removed().area(), 1e-9);
  }

  @Test
  void aBallTakesTheHalfCircle() {
    assertEquals(6.35 * 6.35 * Math.PI / 2, removed("ball"), 1e-9);
  }

  @Test
  void aChamferTakesATriangle() {
    Form form = Form.of(SampleBits.all().get("chamfer"));
    assertEquals(form.faceMm() * form.faceMm() / 2, form.removed().area(), 1e-9);
  }

  @Test
  void aBullNoseTakesTheRectangleLessTheHalfCircle() {
    assertEquals(9.5 * 19 - 9.5 * 9.5 * Math.PI / 2, removed("bull-nose"), 1e-9);
  }

  @Test
  void aDovetailTakesATrapezoid() {
    Form form = Form.of(SampleBits.all().get("dovetail"));
    double lean = Math.tan(Math.toRadians(14));
    double depth = form.faceMm();
    assertEquals(depth * (12.7 - depth * lean), form.removed().area(), 1e-9);
  }

  @Test
  void aTSlotTakesHeadAndNeck() {
    assertEquals(20 * 8 + 9 * 10, removed("t-slot"), 1e-9);
  }
}
