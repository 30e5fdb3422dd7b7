package benchlore.generator.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.generator.drawing.svg.Box;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Outlines as drawing programs write them. */
class PathDataTest {
  private static String read(String d) {
    Path2D path = PathData.parse(d).orElseThrow();
    return Outlines.data(path, new AffineTransform());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "M 1,2 3,4 5,6 z | M1 2L3 4L5 6Z",
        "m1 2 3 4-1-1 | M1 2L4 6L3 5",
        "M0 0H5V6h-1v-.5 | M0 0L5 0L5 6L4 6L4 5.5",
        "M0 0c1 2 3 4 5 6s3 4 5 6 | M0 0C1 2 3 4 5 6C7 8 8 10 10 12",
        "M1 1q1 2 3 4t3 4 | M1 1Q2 3 4 5Q6 7 7 9",
        "m5 5h2v2zm10 0h1 | M5 5L7 5L7 7ZM15 5L16 5",
        "M1e1 2.5.5 3 | M10 2.5L0.5 3"
      })
  void everyCommandIsReadFarAndNear(String written, String meant) {
    assertEquals(meant, read(written));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "L1 2", "M1", "M1 2 3", "M0 0A5 5 0 2 0 1 1", "M1 2 ten", "M1 2Z3 4"})
  void whatIsNoPathIsNone(String d) {
    assertTrue(PathData.parse(d).isEmpty(), d);
  }

  @ParameterizedTest
  @CsvSource({"0,1, -5,0, 5,10", "0,0, -5,-10, 5,0", "1,1, -5,0, 5,10"})
  void halfACircleBulgesToTheSideItsFlagSays(
      int large, int sweep, double x0, double z0, double x1, double z1) {
    Path2D half = PathData.parse("M5 0A5 5 0 " + large + " " + sweep + " -5 0").orElseThrow();
    Box box = Outlines.box(half).orElseThrow();
    assertEquals(x0, box.x0(), 0.01);
    assertEquals(z0 / 2, box.z0(), 0.01);
    assertEquals(x1, box.x1(), 0.01);
    assertEquals(z1 / 2, box.z1(), 0.01);
  }

  @Test
  void anArcKeepsToItsEllipseAndEndsWhereItSays() {
    // Centre 10 20, radii 8 and 4, turned by 30 degrees: both ways round and both sizes.
    AffineTransform ellipse = AffineTransform.getTranslateInstance(10, 20);
    ellipse.rotate(Math.toRadians(30));
    double[] ends = {8 * Math.cos(0.3), 4 * Math.sin(0.3), 8 * Math.cos(2), 4 * Math.sin(2)};
    ellipse.transform(ends, 0, ends, 0, 2);
    for (String flags : new String[] {"0 1", "1 0"}) {
      String d = "M" + ends[0] + " " + ends[1] + "A8 4 30 " + flags + " " + ends[2] + " " + ends[3];
      Path2D arc = PathData.parse(d).orElseThrow();
      double[] at = new double[6];
      for (PathIterator i = arc.getPathIterator(null, 0.0005); !i.isDone(); i.next()) {
        i.currentSegment(at);
        double x = Math.cos(Math.PI / 6) * (at[0] - 10) + Math.sin(Math.PI / 6) * (at[1] - 20);
        double y = -Math.sin(Math.PI / 6) * (at[0] - 10) + Math.cos(Math.PI / 6) * (at[1] - 20);
        assertEquals(1, Math.hypot(x / 8, y / 4), 0.002, d);
      }
      assertEquals(ends[2], at[0], 1e-6);
      assertEquals(ends[3], at[1], 1e-6);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "translate(10) | 13 4",
        "translate(1,2) scale(2) | 7 10",
        "rotate(90) | -4 3",
        "rotate(180 1 1) | -1 -2",
        "matrix(1 0 0 -1 0 10) | 3 6"
      })
  void transformsAreDoneOutermostFirst(String written, String meant) {
    Path2D.Double point = PathData.parse("M3 4h0").orElseThrow();
    String d = Outlines.data(point, Transforms.parse(written).orElseThrow());
    assertTrue(d.startsWith("M" + meant + "L"), d);
  }

  @ParameterizedTest
  @ValueSource(strings = {"turn(3)", "translate(1 2 3)", "scale(", "rotate(x)"})
  void whatIsNoTransformIsNone(String written) {
    assertTrue(Transforms.parse(written).isEmpty(), written);
  }

  @Test
  void aRoundedCornerIsAnArc() {
    Element root =
        LoadedPictures.root(
            "viewBox=\"0 0 10 10\"",
            "<rect class=\"drw-wood\" width=\"10\" height=\"10\" rx=\"5\"/>");
    Path2D round = Outlines.of(root.children("rect").get(0)).orElseThrow();
    double[] at = new double[6];
    for (PathIterator i = round.getPathIterator(null, 0.0005); !i.isDone(); i.next()) {
      if (i.currentSegment(at) != PathIterator.SEG_CLOSE) {
        assertEquals(5, Math.hypot(at[0] - 5, at[1] - 5), 0.01);
      }
    }
  }
}
