package benchlore.generator.drawing.bit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.generator.drawing.svg.Box;
import benchlore.generator.drawing.svg.SvgReading;
import java.util.List;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Whatever passes the checks can be drawn; whatever does not is answered in words. */
class AnyBitTest {
  @Property(tries = 1500)
  void whatPassesTheChecksIsDrawnWithinItsSize(@ForAll("bits") BitGeometry bit) {
    Assume.that(BitGeometry.problems(bit).isEmpty());
    Box box = Form.of(bit).profile().box();
    assertTrue(box.x1() <= bit.maxRadius() + 0.11, () -> bit + " is " + box);
    assertTrue(box.z1() <= bit.cuttingLengthMm() + 0.11, () -> bit + " is " + box);
    assertTrue(box.x0() > -0.11 && box.z0() > -0.11, () -> bit + " is " + box);
    for (String svg : List.of(Bits.bit(bit, "b", "b"), Bits.cut(bit, "c", "c"))) {
      assertFalse(svg.contains("not a number"), bit::toString);
      SvgReading.of(svg).checkTexts(bit.toString());
    }
    assertFalse(Bits.glyph(bit).contains("not a number"), bit::toString);
    Section section = Section.of(BitBody.of(bit));
    assertTrue(section.removed().area() > 0 && section.stock().area() > 0, bit::toString);
  }

  @Property(tries = 500)
  void problemsNeverThrowAndNameAComponent(@ForAll("bits") BitGeometry bit) {
    for (String problem : BitGeometry.problems(bit)) {
      assertTrue(problem.matches("[a-zA-Z]+: .+"), problem);
    }
    assertEquals(BitGeometry.problems(bit), BitGeometry.problems(bit));
  }

  @Provide
  Arbitrary<BitGeometry> bits() {
    Arbitrary<Double> size = Arbitraries.doubles().between(1, 60).ofScale(2);
    Arbitrary<Double> small = Arbitraries.doubles().between(0.5, 15).ofScale(2);
    Arbitrary<Double> angle = Arbitraries.of(5.0, 7.0, 14.0, 30.0, 45.0, 60.0, 75.0, 90.0, 120.0);
    Arbitrary<BearingPlace> place = Arbitraries.of(BearingPlace.class);
    return Combinators.combine(
            Arbitraries.of(BitShape.class), size, size, small, small, small, angle, place)
        .as(AnyBitTest::bit);
  }

  private static BitGeometry bit(
      BitShape shape,
      double diameter,
      double length,
      double radius,
      double other,
      double step,
      double angle,
      BearingPlace place) {
    BitGeometry bare = BitGeometry.of(shape, diameter, length, 8);
    BitGeometry held = place == BearingPlace.NONE ? bare : bare.withBearing(place, other);
    return new BitGeometry(
        shape,
        diameter,
        length,
        8,
        2,
        FluteForm.UPCUT,
        held.bearingPlace(),
        held.bearingMm(),
        when(shape.needs(BitParameter.RADIUS), radius),
        when(shape.needs(BitParameter.ANGLE), angle),
        when(shape.needs(BitParameter.TIP), step),
        when(shape.needs(BitParameter.DEPTH), radius),
        when(shape.needs(BitParameter.STEP), step / 3));
  }

  private static OptionalDouble when(boolean needed, double value) {
    return needed ? OptionalDouble.of(value) : OptionalDouble.empty();
  }
}
