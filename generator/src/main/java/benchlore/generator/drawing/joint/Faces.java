package benchlore.generator.drawing.joint;

import benchlore.generator.drawing.surface.FaceGrain;
import benchlore.generator.drawing.svg.Point;
import benchlore.generator.drawing.svg.Svg;
import benchlore.generator.drawing.svg.Trail;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;

/** Puts faces on the page with their grain. */
final class Faces {
  private Faces() {}

  static void draw(Svg svg, Face face, Grain grain, Function<Space, Point> page) {
    List<Point> corners = face.corners().stream().map(page).toList();
    svg.path(face.look().cssClass(), outline(corners));
    if (grain == Grain.NONE) {
      return;
    }
    String marks =
        face.end() ? FaceGrain.rings(corners) : FaceGrain.lines(corners, along(face, grain, page));
    if (!marks.isEmpty()) {
      svg.path("drw-hatch", marks);
    }
  }

  /** The fibres' direction on the page: what of it lies in the face. */
  private static Point along(Face face, Grain grain, Function<Space, Point> page) {
    Space a = face.corners().get(0);
    Space n = cross(minus(face.corners().get(1), a), minus(face.corners().get(2), a));
    Space g = grain.along();
    double share = dot(g, n) / dot(n, n);
    Space within = minus(g, n.times(share));
    Point from = page.apply(a);
    Point to = page.apply(a.plus(within.times(100)));
    return new Point(to.x() - from.x(), to.z() - from.z());
  }

  /** Outline and near end of a piece without edges along it. */
  static void round(Svg svg, Prism prism, String cssClass, Function<Space, Point> page) {
    List<Point> all = new ArrayList<>();
    for (Space p : prism.near()) {
      all.add(page.apply(p));
      all.add(page.apply(p.plus(prism.back())));
    }
    svg.path(cssClass, outline(hull(all)));
    svg.path(cssClass, outline(prism.near().stream().map(page).toList()));
  }

  /** The smallest convex outline, by walking the points from left to right and back. */
  private static List<Point> hull(List<Point> points) {
    List<Point> sorted = new ArrayList<>(points);
    sorted.sort(Comparator.comparingDouble(Point::x).thenComparingDouble(Point::z));
    List<Point> hull = half(sorted);
    List<Point> back = new ArrayList<>(sorted);
    java.util.Collections.reverse(back);
    hull.addAll(half(back));
    return hull;
  }

  private static List<Point> half(List<Point> sorted) {
    List<Point> half = new ArrayList<>();
    for (Point p : sorted) {
      while (half.size() > 1
          && turn(half.get(half.size() - 2), half.get(half.size() - 1), p) <= 0) {
        half.remove(half.size() - 1);
      }
      half.add(p);
    }
    half.remove(half.size() - 1);
    return half;
  }

  private static double turn(Point a, Point b, Point c) {
    return (b.x() - a.x()) * (c.z() - a.z()) - (b.z() - a.z()) * (c.x() - a.x());
  }

  private static String outline(List<Point> corners) {
    Trail trail = new Trail(corners.get(0).x(), corners.get(0).z());
    for (Point p : corners.subList(1, corners.size())) {
      trail.to(p.x(), p.z());
    }
    return trail.closed();
  }

  private static Space minus(Space a, Space b) {
    return a.plus(b.times(-1));
  }

  private static double dot(Space a, Space b) {
    return a.x() * b.x() + a.y() * b.y() + a.z() * b.z();
  }

  private static Space cross(Space a, Space b) {
    return new Space(
        a.y() * b.z() - a.z() * b.y(),
        a.z() * b.x() - a.x() * b.z(),
        a.x() * b.y() - a.y() * b.x());
  }
}
