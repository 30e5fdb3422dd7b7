package benchlore.generator.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * A point of an outline.
 *
 * @param at where, millimetres
 * @param smooth whether the outline flows through it; else it is a corner
 * @param radius of a corner that is rounded; 0 for a sharp one
 */
public record Knot(Point at, boolean smooth, double radius) {
  private static final double ON_AXIS = 1e-6;

  Knot moved(Affine move) {
    return new Knot(move.of(at), smooth, radius);
  }

  /**
   * A half outline whose ends lie on the mirror's axis, made whole; else empty.
   *
   * @param half from axis to axis
   * @param mirror which axis
   */
  public static List<Knot> joined(List<Knot> half, Mirror mirror) {
    Knot first = half.get(0);
    Knot last = half.get(half.size() - 1);
    if (mirror.offAxis(first.at()) > ON_AXIS || mirror.offAxis(last.at()) > ON_AXIS) {
      return List.of();
    }
    List<Knot> whole = new ArrayList<>(half);
    for (int i = half.size() - 2; i > 0; i--) {
      whole.add(half.get(i).moved(mirror.move()));
    }
    return whole;
  }
}
