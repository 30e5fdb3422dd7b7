package benchlore.generator.drawing.surface;

import benchlore.generator.drawing.svg.Point;
import benchlore.generator.drawing.svg.Svg;
import java.util.ArrayList;
import java.util.List;

/** The marks of grain on a face, in page units: lines along the fibres, arcs where they end. */
public final class FaceGrain {
  private static final double[] GAPS = {5, 7, 4, 8, 6, 4.5, 7.5};
  private static final double STEP = 2.5;
  private static final double RING = 4.5;
  private static final double INSET = 1.2;

  private FaceGrain() {}

  /** Lines at a slope given by a direction on the page. */
  public static String lines(List<Point> face, Point along) {
    double length = Math.hypot(along.x(), along.z());
    double ux = along.x() / length;
    double uz = along.z() / length;
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (Point p : face) {
      double across = -uz * p.x() + ux * p.z();
      low = Math.min(low, across);
      high = Math.max(high, across);
    }
    StringBuilder d = new StringBuilder();
    double v = low + 3;
    for (int i = 0; v < high - 1.5; i++) {
      List<Double> meets = meets(face, ux, uz, v);
      for (int k = 0; k + 1 < meets.size(); k += 2) {
        double a = meets.get(k) + INSET;
        double b = meets.get(k + 1) - INSET;
        if (b - a > 2) {
          d.append('M').append(Svg.pair(a * ux - v * uz, a * uz + v * ux));
          d.append('L').append(Svg.pair(b * ux - v * uz, b * uz + v * ux));
        }
      }
      v += GAPS[i % GAPS.length];
    }
    return d.toString();
  }

  /** Where a line at {@code v} across crosses the face's edges, in order along it. */
  private static List<Double> meets(List<Point> face, double ux, double uz, double v) {
    List<Double> meets = new ArrayList<>();
    for (int i = 0; i < face.size(); i++) {
      Point a = face.get(i);
      Point b = face.get((i + 1) % face.size());
      double va = -uz * a.x() + ux * a.z() - v;
      double vb = -uz * b.x() + ux * b.z() - v;
      if (va < 0 != vb < 0) {
        double t = va / (va - vb);
        double x = a.x() + t * (b.x() - a.x());
        double z = a.z() + t * (b.z() - a.z());
        meets.add(ux * x + uz * z);
      }
    }
    meets.sort(null);
    return meets;
  }

  /** Arcs of growth rings round a pith below and left of the face. */
  public static String rings(List<Point> face) {
    double x0 = Double.POSITIVE_INFINITY;
    double x1 = Double.NEGATIVE_INFINITY;
    double z0 = Double.POSITIVE_INFINITY;
    double z1 = Double.NEGATIVE_INFINITY;
    for (Point p : face) {
      x0 = Math.min(x0, p.x());
      x1 = Math.max(x1, p.x());
      z0 = Math.min(z0, p.z());
      z1 = Math.max(z1, p.z());
    }
    Point pith = new Point(x0 + (x1 - x0) * 0.35, z1 + 26);
    double farthest = Math.max(pith.distance(new Point(x1, z0)), pith.distance(new Point(x0, z0)));
    StringBuilder d = new StringBuilder();
    for (double r = 26 + RING / 2; r < farthest; r += RING) {
      arc(d, face, pith, r);
    }
    return d.toString();
  }

  private static void arc(StringBuilder d, List<Point> face, Point pith, double r) {
    boolean drawing = false;
    for (double angle = Math.PI; angle < 2 * Math.PI; angle += STEP / r) {
      Point p = new Point(pith.x() + r * Math.cos(angle), pith.z() + r * Math.sin(angle));
      boolean in = inside(face, p);
      if (in) {
        d.append(drawing ? 'L' : 'M').append(Svg.pair(p.x(), p.z()));
      }
      drawing = in;
    }
  }

  public static boolean inside(List<Point> face, Point p) {
    boolean inside = false;
    for (int i = 0; i < face.size(); i++) {
      Point a = face.get(i);
      Point b = face.get((i + 1) % face.size());
      if (a.z() > p.z() != b.z() > p.z()) {
        double x = a.x() + (p.z() - a.z()) / (b.z() - a.z()) * (b.x() - a.x());
        inside ^= p.x() < x;
      }
    }
    return inside;
  }
}
