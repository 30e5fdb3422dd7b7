package benchlore.generator.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.generator.content.Facts;
import benchlore.generator.drawing.bit.EdgeShape;
import benchlore.generator.drawing.joint.JointForm;
import benchlore.generator.planning.Content;
import java.io.IOException;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The tables of joints and edges use every form that can be drawn. */
final class ShapesContentTest {
  @Test
  void everyJointFormHasItsRow() throws IOException {
    List<Facts> joints = Content.load(Folders.CONTENT).value().orElseThrow().joints();
    List<String> rows = joints.stream().map(row -> row.words("form")).sorted().toList();
    List<String> forms = Arrays.stream(JointForm.values()).map(JointForm::word).sorted().toList();
    assertEquals(forms, rows);
  }

  @Test
  void everyEdgeShapeIsUsed() throws IOException {
    List<Facts> edges = Content.load(Folders.CONTENT).value().orElseThrow().edges();
    Set<EdgeShape> used = EnumSet.noneOf(EdgeShape.class);
    edges.forEach(row -> EdgeShape.parse(row.words("shape")).ifPresent(used::add));
    assertEquals(EnumSet.allOf(EdgeShape.class), used);
    assertTrue(edges.stream().anyMatch(row -> !row.words("bit").isEmpty()));
  }
}
