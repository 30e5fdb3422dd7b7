package benchlore.generator.drawing.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.generator.drawing.bit.EdgeShape;
import benchlore.generator.drawing.surface.FaceGrain;
import benchlore.generator.drawing.svg.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Joints drawn apart: solids, their faces and grain, and the figures beside them. */
class JointDrawingTest {
  @Test
  void aBlockShowsThreeFacesTheNearOneLast() {
    List<Face> faces = Prism.block(new Space(0, 0, 0), new Space(3, 2, 1), Grain.X).faces();
    assertEquals(3, faces.size());
    assertEquals(Face.Look.FRONT, faces.get(2).look());
    for (Face face : faces) {
      assertTrue(face.faces());
      assertEquals(face.look() == Face.Look.SIDE, face.end(), "fibres along x end in the side");
    }
  }

  @Test
  void fibresEndInTheFaceTheyRunInto() {
    Space low = new Space(0, 0, 0);
    Space high = new Space(3, 2, 1);
    assertEquals(Face.Look.FRONT, endOf(Prism.block(low, high, Grain.Y)));
    assertEquals(Face.Look.TOP, endOf(Prism.block(low, high, Grain.Z)));
  }

  private static Face.Look endOf(Prism prism) {
    List<Face> ends = prism.faces().stream().filter(Face::end).toList();
    assertEquals(1, ends.size());
    return ends.get(0).look();
  }

  @Test
  void theSlopeOfAScarfIsLongGrain() {
    Prism slope = Prism.front(Grain.X, 0, 5, new Point(0, 0), new Point(16, 0), new Point(0, 2));
    assertTrue(slope.faces().stream().noneMatch(Face::end));
  }

  @ParameterizedTest
  @EnumSource(Grain.class)
  void aPieceIsTheSameHoweverItsShapeIsGiven(Grain grain) {
    Prism front = Prism.block(new Space(0, 0, 0), new Space(3, 2, 1), grain);
    Prism side =
        Prism.side(grain, 0, 3, new Point(0, 0), new Point(2, 0), new Point(2, 1), new Point(0, 1));
    Prism top =
        Prism.top(grain, 0, 1, new Point(0, 0), new Point(3, 0), new Point(3, 2), new Point(0, 2));
    assertEquals(corners(front), corners(side));
    assertEquals(corners(front), corners(top));
  }

  private static List<String> corners(Prism prism) {
    List<String> all = new ArrayList<>();
    for (Face face : prism.faces()) {
      List<String> names = new ArrayList<>(face.corners().stream().map(Space::toString).toList());
      names.sort(null);
      all.add(face.look() + " " + face.end() + names);
    }
    all.sort(null);
    return all;
  }

  @Test
  void grainStaysInsideItsFace() {
    List<Point> notched =
        List.of(
            new Point(0, 0),
            new Point(60, 0),
            new Point(60, 60),
            new Point(40, 60),
            new Point(40, 20),
            new Point(0, 20));
    for (String marks :
        List.of(FaceGrain.lines(notched, new Point(1, 0.3)), FaceGrain.rings(notched))) {
      assertFalse(marks.isEmpty());
      for (String pair : marks.substring(1).split("[ML]", -1)) {
        String[] xz = pair.split(" ", -1);
        Point p = new Point(Double.parseDouble(xz[0]), Double.parseDouble(xz[1]));
        assertTrue(FaceGrain.inside(notched, p), pair);
      }
    }
  }

  @ParameterizedTest
  @CsvSource({
    "0.33, 0.33, 1/3 t",
    "0.5, 0.5, 1/2 t",
    "0.2, 0.2, 1/5 t",
    "0.5, 1, 1/2 to 1 t",
    "0.37, 0.37, 0.37 t"
  })
  void sharesReadAsFractions(double low, double high, String words) {
    JointSizes sizes = new JointSizes(Map.of("thickness-share", new JointSizes.Size(low, high)));
    assertEquals(words, sizes.share("thickness-share").text());
  }

  @ParameterizedTest
  @EnumSource(JointForm.class)
  void aMissingSizeIsRefusedByName(JointForm form) {
    JointSizes none = new JointSizes(Map.of());
    if (form == JointForm.EDGE || form == JointForm.RUB) {
      assertFalse(JointDrawing.draw(form, none, "A joint", "p").isEmpty());
      return;
    }
    var refusal =
        assertThrows(
            IllegalArgumentException.class, () -> JointDrawing.draw(form, none, "A joint", "p"));
    assertTrue(refusal.getMessage().startsWith("this joint is drawn by its "));
  }

  @Test
  void wordsAndFormsMatch() {
    for (JointForm form : JointForm.values()) {
      assertEquals(form, JointForm.parse(form.word()).orElseThrow());
    }
    for (EdgeShape shape : EdgeShape.values()) {
      assertEquals(shape, EdgeShape.parse(shape.word()).orElseThrow());
    }
    assertTrue(JointForm.parse("knot").isEmpty());
  }
}
