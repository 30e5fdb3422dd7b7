package benchlore.generator.drawing.joint;

import benchlore.generator.drawing.svg.Point;
import java.util.List;

/**
 * One flat side of a piece.
 *
 * @param corners in order round it, anticlockwise seen from outside
 * @param end whether the fibres end in it
 * @param look how light falls on it
 */
record Face(List<Space> corners, boolean end, Look look) {
  /** How a face is coloured. */
  enum Look {
    FRONT("drw-stock"),
    SIDE("drw-stock drw-side"),
    TOP("drw-stock drw-top"),
    HOLE("drw-hole"),
    METAL("drw-metal"),
    GLUE("drw-glue");

    private final String cssClass;

    Look(String cssClass) {
      this.cssClass = cssClass;
    }

    String cssClass() {
      return cssClass;
    }
  }

  Face {
    corners = List.copyOf(corners);
  }

  /** Whether it is turned towards you. */
  boolean faces() {
    double twice = 0;
    for (int i = 0; i < corners.size(); i++) {
      Point a = corners.get(i).seen();
      Point b = corners.get((i + 1) % corners.size()).seen();
      twice += a.x() * b.z() - b.x() * a.z();
    }
    return twice > 1e-9;
  }

  /** Middle of its corners as seen, for drawing what lies behind first. */
  Point middle() {
    double x = 0;
    double z = 0;
    for (Space corner : corners) {
      x += corner.seen().x() / corners.size();
      z += corner.seen().z() / corners.size();
    }
    return new Point(x, z);
  }
}
