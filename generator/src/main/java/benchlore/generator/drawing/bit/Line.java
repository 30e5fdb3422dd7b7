package benchlore.generator.drawing.bit;

import benchlore.generator.drawing.svg.Point;
import java.util.List;

/** A straight piece of an outline. */
record Line(Point from, Point to) implements Segment {
  @Override
  public Point at(double t) {
    return new Point(from.x() + t * (to.x() - from.x()), from.z() + t * (to.z() - from.z()));
  }

  @Override
  public Segment part(double t0, double t1) {
    return new Line(at(t0), at(t1));
  }

  @Override
  public Segment reversed() {
    return new Line(to, from);
  }

  @Override
  public Segment mirrored() {
    return new Line(from.mirrored(), to.mirrored());
  }

  @Override
  public List<Double> meetsX(double x) {
    return meets(from.x(), to.x(), x);
  }

  @Override
  public List<Double> meetsZ(double z) {
    return meets(from.z(), to.z(), z);
  }

  private static List<Double> meets(double a, double b, double value) {
    return Math.abs(b - a) < 1e-12 ? List.of() : List.of((value - a) / (b - a));
  }

  @Override
  public double areaShare() {
    return (from.x() * to.z() - to.x() * from.z()) / 2;
  }
}
