package benchlore.generator.drawing.svg;

/**
 * A place in a drawing, millimetres: {@code x} to the right, {@code z} up. In a section through a
 * bit, x is out from the axis.
 *
 * @param x to the right
 * @param z up
 */
public record Point(double x, double z) {
  /** The same to the left of the axis. */
  public Point mirrored() {
    return new Point(-x, z);
  }

  /** How far another lies. */
  public double distance(Point other) {
    return Math.hypot(other.x - x, other.z - z);
  }

  /** The place a share of the way to another. */
  public Point towards(Point other, double share) {
    return new Point(x + (other.x - x) * share, z + (other.z - z) * share);
  }
}
