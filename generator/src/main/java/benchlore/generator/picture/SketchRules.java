package benchlore.generator.picture;

import benchlore.generator.content.Problem;
import benchlore.generator.drawing.svg.Box;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What must hold for a sketch and for the picture of a fault besides. */
final class SketchRules {
  private SketchRules() {}

  /** A sketch is as wide as a page's drawing. */
  static List<Problem> sketch(Element root) {
    return framed(root, "320 wide", Frames.of(root).filter(f -> f.wide() == 320));
  }

  /** The picture of a fault is a square. */
  static List<Problem> fault(Element root) {
    return framed(root, "96 by 96", Frames.of(root).filter(f -> f.wide() == 96 && f.high() == 96));
  }

  private static List<Problem> framed(Element root, String size, Optional<Box> right) {
    List<Problem> problems = new ArrayList<>(PictureRules.problems(root));
    if (problems.isEmpty() && right.filter(f -> f.x0() == 0 && f.z0() == 0).isEmpty()) {
      problems.add(
          root.problem(
              "viewBox", "this frame does not fit", "Start it at 0 0 and make it " + size + "."));
    }
    return problems;
  }
}
