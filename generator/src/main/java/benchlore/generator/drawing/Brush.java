package benchlore.generator.drawing;

/**
 * A flat brush in a sketch.
 *
 * @param tip the middle of the bristles' ends
 * @param degrees where the handle points: 0 up, 90 right
 * @param tipHalf half the bristles' width at the tip
 * @param half half the width at the ferrule
 */
record Brush(Point tip, double degrees, double tipHalf, double half) {
  private static final double BRISTLES = 24;

  /** From its broad side. */
  static Brush broad(double x, double y, double degrees) {
    return new Brush(new Point(x, y), degrees, 13, 12);
  }

  /** From its narrow side. */
  static Brush narrow(double x, double y, double degrees) {
    return new Brush(new Point(x, y), degrees, 2, 5);
  }

  void draw(Svg svg) {
    svg.path("drw-cloth", part(0, tipHalf, BRISTLES, half));
    svg.path("drw-metal", part(BRISTLES, half + 1, BRISTLES + 10, half + 1));
    svg.path("drw-wood", part(BRISTLES + 10, half, BRISTLES + 18, 3) + handle());
  }

  /** With finish in the bristles this far up. */
  void wet(Svg svg, double up) {
    double there = tipHalf + (half - tipHalf) * up / BRISTLES;
    svg.path("drw-film", part(0, tipHalf, up, there));
  }

  private String handle() {
    return part(BRISTLES + 18, 3, BRISTLES + 46, 4);
  }

  /** A slice across the brush between two heights, with half its width at each. */
  private String part(double low, double lowHalf, double high, double highHalf) {
    Point a = at(-lowHalf, low);
    Point b = at(lowHalf, low);
    Point c = at(highHalf, high);
    Point d = at(-highHalf, high);
    return new Trail(a.x(), a.z()).to(b.x(), b.z()).to(c.x(), c.z()).to(d.x(), d.z()).closed();
  }

  private Point at(double across, double up) {
    double sin = Math.sin(Math.toRadians(degrees));
    double cos = Math.cos(Math.toRadians(degrees));
    return new Point(tip.x() + across * cos + up * sin, tip.z() + across * sin - up * cos);
  }
}
