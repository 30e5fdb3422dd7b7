package benchlore.generator.drawing;

/** A mirror through the origin. */
public enum Mirror {
  /** Left and right alike: the axis is x = 0. */
  LEFT_RIGHT,
  /** Up and down alike: the axis is y = 0. */
  UP_DOWN;

  Affine move() {
    return switch (this) {
      case LEFT_RIGHT -> new Affine(-1, 0, 0, 1, 0, 0);
      case UP_DOWN -> new Affine(1, 0, 0, -1, 0, 0);
    };
  }

  double offAxis(Point p) {
    return switch (this) {
      case LEFT_RIGHT -> Math.abs(p.x());
      case UP_DOWN -> Math.abs(p.z());
    };
  }
}
