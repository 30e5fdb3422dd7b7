package benchlore.generator.drawing.svg;

/**
 * An upright rectangle.
 *
 * @param x0 its left side
 * @param z0 one end of its height
 * @param x1 its right side, not before {@code x0}
 * @param z1 the other end, not before {@code z0}
 */
public record Box(double x0, double z0, double x1, double z1) {
  /** From side to side. */
  public double wide() {
    return x1 - x0;
  }

  /** From end to end. */
  public double high() {
    return z1 - z0;
  }

  /** Its middle. */
  public Point middle() {
    return new Point((x0 + x1) / 2, (z0 + z1) / 2);
  }

  /** Grown so that it holds a point. */
  public Box with(Point p) {
    return new Box(
        Math.min(x0, p.x()), Math.min(z0, p.z()), Math.max(x1, p.x()), Math.max(z1, p.z()));
  }

  /** Grown so that it holds another. */
  public Box with(Box other) {
    return with(new Point(other.x0, other.z0)).with(new Point(other.x1, other.z1));
  }
}
