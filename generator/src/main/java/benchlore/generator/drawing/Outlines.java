package benchlore.generator.drawing;

import java.util.ArrayList;
import java.util.List;

/** Lines through knots: straight with rounded corners, or smooth. */
final class Outlines {
  private static final double SAME = 1e-9;

  private Outlines() {}

  /** Straight from knot to knot, corners rounded by their radius as far as there is room. */
  static Trace straight(List<Knot> raw, boolean closed) {
    List<Knot> knots = distinct(raw, closed);
    int n = knots.size();
    List<Point> begin = new ArrayList<>();
    List<Point> end = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      Point at = knots.get(i).at();
      boolean tip = !closed && (i == 0 || i == n - 1);
      Point before = tip ? at : knots.get((i + n - 1) % n).at();
      Point after = tip ? at : knots.get((i + 1) % n).at();
      double cut = tip ? 0 : cut(before, at, after, knots.get(i).radius());
      begin.add(cut < SAME ? at : at.towards(before, cut / at.distance(before)));
      end.add(cut < SAME ? at : at.towards(after, cut / at.distance(after)));
    }
    Tracer tracer = new Tracer(end.get(0));
    for (int i = 1; i < (closed ? n + 1 : n); i++) {
      int k = i % n;
      tracer.line(begin.get(k));
      if (begin.get(k).distance(end.get(k)) > SAME) {
        round(tracer, begin.get(k), knots.get(k).at(), end.get(k));
      }
    }
    return closed ? tracer.closed() : tracer.open();
  }

  /** How much of both edges a rounding takes; no more than half of the shorter. */
  private static double cut(Point before, Point at, Point after, double radius) {
    double in = at.distance(before);
    double out = at.distance(after);
    if (radius <= 0 || in < SAME || out < SAME) {
      return 0;
    }
    double cos =
        ((before.x() - at.x()) * (after.x() - at.x())
                + (before.z() - at.z()) * (after.z() - at.z()))
            / (in * out);
    double half = Math.acos(Math.max(-1, Math.min(1, cos))) / 2;
    return half < 1e-3 ? 0 : Math.min(radius / Math.tan(half), Math.min(in, out) / 2);
  }

  /** A circular arc between two edges, as one cubic. */
  private static void round(Tracer tracer, Point begin, Point corner, Point end) {
    double half = Math.asin(Math.min(1, begin.distance(end) / 2 / begin.distance(corner)));
    double sweep = Math.PI - 2 * half;
    double pull = 4.0 / 3 * Math.tan(sweep / 4) * Math.tan(half);
    tracer.curve(begin.towards(corner, pull), end.towards(corner, pull), end);
  }

  /** Through every knot without a break, except at corners; straight from corner to corner. */
  static Trace smooth(List<Knot> raw, boolean closed) {
    List<Knot> knots = distinct(raw, closed);
    int n = knots.size();
    Tracer tracer = new Tracer(knots.get(0).at());
    for (int i = 0; i < (closed ? n : n - 1); i++) {
      Knot a = knots.get(i);
      Knot b = knots.get((i + 1) % n);
      boolean fromCorner = !a.smooth() || (!closed && i == 0);
      boolean toCorner = !b.smooth() || (!closed && i == n - 2);
      if (fromCorner && toCorner) {
        tracer.line(b.at());
        continue;
      }
      Point before = knots.get((i + n - 1) % n).at();
      Point after = knots.get((i + 2) % n).at();
      Point first = fromCorner ? a.at() : handle(before, a.at(), b.at());
      Point second = toCorner ? b.at() : handle(after, b.at(), a.at());
      // From a corner a curve starts straight: its second control point leads.
      tracer.curve(
          fromCorner ? a.at().towards(second, 0.5) : first,
          toCorner ? b.at().towards(first, 0.5) : second,
          b.at());
    }
    return closed ? tracer.closed() : tracer.open();
  }

  /** Control point after {@code at} on the way to {@code to}: centripetal Catmull-Rom. */
  private static Point handle(Point before, Point at, Point to) {
    double in = Math.sqrt(at.distance(before));
    double out = Math.sqrt(to.distance(at));
    double share = 3 * in * (in + out);
    double own = 2 * in * in + 3 * in * out + out * out;
    return new Point(
        (in * in * to.x() - out * out * before.x() + own * at.x()) / share,
        (in * in * to.z() - out * out * before.z() + own * at.z()) / share);
  }

  /** A rod or strap: a line with a thickness, its bends kept concentric. */
  static Trace bar(List<Knot> raw, double thick) {
    List<Knot> line = distinct(raw, false);
    List<Knot> outline = new ArrayList<>(side(line, thick / 2));
    List<Knot> right = side(line, -thick / 2);
    for (int i = right.size() - 1; i >= 0; i--) {
      outline.add(right.get(i));
    }
    return straight(outline, true);
  }

  private static List<Knot> side(List<Knot> line, double off) {
    List<Knot> side = new ArrayList<>();
    for (int i = 0; i < line.size(); i++) {
      Point at = line.get(i).at();
      Point in = direction(line.get(Math.max(0, i - 1)).at(), line.get(Math.max(1, i)).at());
      int next = Math.min(line.size() - 1, i + 1);
      Point out = direction(line.get(next - 1).at(), line.get(next).at());
      // The mitre of both normals.
      double nx = -(in.z() + out.z()) / 2;
      double nz = (in.x() + out.x()) / 2;
      double square = Math.max(0.1, nx * nx + nz * nz);
      boolean left = in.x() * out.z() - in.z() * out.x() > 0;
      double radius = line.get(i).radius();
      double bent = radius > 0 ? Math.max(0, left ? radius - off : radius + off) : 0;
      side.add(
          new Knot(new Point(at.x() + off * nx / square, at.z() + off * nz / square), false, bent));
    }
    return side;
  }

  static Point direction(Point from, Point to) {
    double length = from.distance(to);
    return new Point((to.x() - from.x()) / length, (to.z() - from.z()) / length);
  }

  private static List<Knot> distinct(List<Knot> knots, boolean closed) {
    List<Knot> kept = new ArrayList<>();
    for (Knot knot : knots) {
      if (kept.isEmpty() || kept.get(kept.size() - 1).at().distance(knot.at()) > SAME) {
        kept.add(knot);
      }
    }
    boolean again =
        closed
            && kept.size() > 1
            && kept.get(0).at().distance(kept.get(kept.size() - 1).at()) < SAME;
    return again ? kept.subList(0, kept.size() - 1) : kept;
  }
}
