package benchlore.generator.drawing;

/**
 * A move of the plane: x' = a x + c z + e, z' = b x + d z + f.
 *
 * @param a x from x
 * @param b z from x
 * @param c x from z
 * @param d z from z
 * @param e x at the origin
 * @param f z at the origin
 */
record Affine(double a, double b, double c, double d, double e, double f) {
  static Affine shift(double dx, double dz) {
    return new Affine(1, 0, 0, 1, dx, dz);
  }

  /** Anticlockwise, z up. */
  static Affine turn(double degrees, Point about) {
    double cos = Math.cos(Math.toRadians(degrees));
    double sin = Math.sin(Math.toRadians(degrees));
    return new Affine(
        cos,
        sin,
        -sin,
        cos,
        about.x() - cos * about.x() + sin * about.z(),
        about.z() - sin * about.x() - cos * about.z());
  }

  /** Millimetres onto the page, where y runs down: {@code middle} comes to {@code on}. */
  static Affine page(double scale, Point middle, Point on) {
    return new Affine(
        scale, 0, 0, -scale, on.x() - scale * middle.x(), on.z() + scale * middle.z());
  }

  Point of(Point p) {
    return new Point(a * p.x() + c * p.z() + e, b * p.x() + d * p.z() + f);
  }

  /** This move, then another. */
  Affine then(Affine next) {
    Point origin = next.of(new Point(e, f));
    return new Affine(
        next.a * a + next.c * b,
        next.b * a + next.d * b,
        next.a * c + next.c * d,
        next.b * c + next.d * d,
        origin.x(),
        origin.z());
  }
}
