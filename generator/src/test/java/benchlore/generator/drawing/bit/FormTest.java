package benchlore.generator.drawing.bit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.generator.drawing.svg.Box;
import benchlore.generator.drawing.svg.Point;
import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What must hold for the outline of every bit and of every cut. */
class FormTest {
  private static final double TINY = 1e-6;

  static Stream<String> names() {
    return SampleBits.all().keySet().stream();
  }

  @Test
  void everyShapeHasASample() {
    Set<BitShape> seen = EnumSet.noneOf(BitShape.class);
    SampleBits.all().values().forEach(bit -> seen.add(bit.shape()));
    assertEquals(EnumSet.allOf(BitShape.class), seen);
  }

  @ParameterizedTest
  @MethodSource("names")
  void profileStaysWithinDiameterAndLength(String name) {
    BitGeometry bit = SampleBits.all().get(name);
    Box box = Form.of(bit).profile().box();
    assertEquals(0, box.x0(), TINY);
    assertEquals(0, box.z0(), TINY);
    assertEquals(bit.maxRadius(), box.x1(), TINY);
    assertEquals(bit.cuttingLengthMm(), box.z1(), TINY);
  }

  @ParameterizedTest
  @MethodSource("names")
  void profileClimbsWithoutGaps(String name) {
    Outline profile = Form.of(SampleBits.all().get(name)).profile();
    Point last = new Point(0, 0);
    for (Segment segment : profile.segments()) {
      assertTrue(last.distance(segment.from()) < TINY, () -> "gap at " + segment);
      double z = segment.from().z();
      for (int i = 1; i <= 10; i++) {
        double next = segment.at(i / 10.0).z();
        assertTrue(next >= z - TINY, () -> "falls back at " + segment);
        z = next;
      }
      last = segment.to();
    }
  }

  @ParameterizedTest
  @MethodSource("names")
  void stockAndCutCloseAndAddUp(String name) {
    BitBody body = BitBody.of(SampleBits.all().get(name));
    Section section = Section.of(body);
    assertTrue(section.stock().isClosed());
    assertTrue(section.removed().isClosed());
    assertTrue(section.removed().area() > 0);
    Form form = body.form();
    Box box = section.stock().box();
    double left = form.edgeMm() > 0 ? form.edgeMm() : box.x0();
    double blank = (box.x1() - left) * (form.faceMm() - box.z0());
    assertEquals(blank, section.stock().area() + section.removed().area(), 1e-6 * blank);
  }

  @Test
  void aLockMitreFitsItselfTurnedHalfRound() {
    Outline contour = Form.of(SampleBits.all().get("lock-mitre")).contour();
    Point a = contour.from();
    Point b = contour.to();
    Outline back = contour.reversed();
    for (int i = 0; i < contour.segments().size(); i++) {
      Point p = contour.segments().get(i).to();
      Point q = back.segments().get(i).to();
      assertEquals(a.x() + b.x(), p.x() + q.x(), TINY);
      assertEquals(a.z() + b.z(), p.z() + q.z(), TINY);
    }
  }
}
