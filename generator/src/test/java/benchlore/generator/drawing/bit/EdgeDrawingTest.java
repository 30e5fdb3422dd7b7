package benchlore.generator.drawing.bit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.generator.drawing.svg.SvgReading;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Edge profiles, all at one scale. */
class EdgeDrawingTest {
  /** Bits that shape the edge of a board. */
  private static final List<String> EDGE_BITS =
      List.of("round-over", "cove", "ogee", "bull-nose", "thumbnail", "bead");

  static Stream<String> bits() {
    return SampleBits.all().keySet().stream().filter(EDGE_BITS::contains);
  }

  @ParameterizedTest
  @EnumSource(EdgeShape.class)
  void aShapeIsDrawnOnAUsualBoard(EdgeShape shape) {
    SvgReading svg = check(Bits.edge(shape, 5, "An edge", "p"));
    assertEquals(24 + 5 * EdgeDrawing.BOARD_MM, svg.viewBox()[3]);
  }

  @ParameterizedTest
  @MethodSource("bits")
  void aBitsEdgeIsDrawnOnABoardThickEnough(String bit) {
    SvgReading svg = check(Bits.edgeCut(SampleBits.all().get(bit), "An edge", "p"));
    assertTrue(svg.viewBox()[3] > 40, bit);
  }

  private static SvgReading check(String text) {
    SvgReading svg = SvgReading.of(text);
    assertEquals("p-t p-d", svg.elements("svg").get(0).getAttribute("aria-labelledby"));
    assertTrue(svg.elements("desc").get(0).getTextContent().length() > 40);
    assertFalse(text.contains("not a number"));
    assertEquals(4, svg.elements("path").size());
    return svg;
  }

  @Test
  void someBitsAreTried() {
    assertTrue(bits().count() > 3);
  }

  @Test
  void aSizeTheBoardHasNoRoomForIsRefused() {
    var refusal =
        assertThrows(
            IllegalArgumentException.class, () -> Bits.edge(EdgeShape.BEVEL, 40, "An edge", "p"));
    assertEquals("sizeMm must be 0 to 15, is 40.0", refusal.getMessage());
  }
}
