package benchlore.generator.drawing.joint;

import benchlore.generator.drawing.svg.Point;

/**
 * A place in the shop, millimetres: {@code x} to the right, {@code y} away from you, {@code z} up.
 */
record Space(double x, double y, double z) {
  /** Share of a millimetre away from you that is drawn to the right and up. */
  private static final double RIGHT = 0.42;

  private static final double UP = 0.34;

  Space plus(Space other) {
    return new Space(x + other.x, y + other.y, z + other.z);
  }

  Space times(double factor) {
    return new Space(x * factor, y * factor, z * factor);
  }

  /** Seen obliquely from the front, from the right and from above; z up. */
  Point seen() {
    return new Point(x + RIGHT * y, z + UP * y);
  }
}
