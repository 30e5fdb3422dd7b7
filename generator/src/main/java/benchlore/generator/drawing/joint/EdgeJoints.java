package benchlore.generator.drawing.joint;

import benchlore.generator.drawing.svg.Measure;
import benchlore.generator.drawing.svg.Point;

/** Joints along the edges of boards, seen at the boards' ends. */
final class EdgeJoints {
  /** A board of 20 mm, drawn larger so that what is cut in it is seen. */
  private static final double LARGER = 1.7;

  private static final double T = 20 * LARGER;
  private static final double WIDE = 52;
  private static final double DEEP = 92;
  private static final double GAP = 40;

  private EdgeJoints() {}

  static Scene edge() {
    double right = WIDE + GAP + 16;
    return board(new Scene(), 0)
        .mark(
            Face.Look.GLUE,
            onEdge(5, 3),
            onEdge(DEEP - 5, 3),
            onEdge(DEEP - 5, T - 3),
            onEdge(5, T - 3))
        .wood(block(right))
        .move(new Space(right + WIDE * 0.75, DEEP / 2, T), new Space(right + 8, DEEP / 2, T))
        .note(new Space(WIDE, DEEP * 0.7, T / 2), "glue", Measure.words("one edge"))
        .note(new Space(right + WIDE, 0, T / 2), "grain", Measure.words("both ways"));
  }

  static Scene rub() {
    double long_ = 120;
    double high = 40;
    return new Scene()
        .wood(Prism.block(new Space(0, 0, 0), new Space(long_, T, high), Grain.X))
        .mark(
            Face.Look.GLUE,
            new Space(5, 3, high),
            new Space(long_ - 5, 3, high),
            new Space(long_ - 5, T - 3, high),
            new Space(5, T - 3, high))
        .wood(
            Prism.block(
                new Space(18, 0, high + 20), new Space(18 + long_, T, 2 * high + 20), Grain.X))
        .move(new Space(78, 0, 1.5 * high + 20), new Space(112, 0, 1.5 * high + 20))
        .move(new Space(78, 0, 1.5 * high + 20), new Space(44, 0, 1.5 * high + 20))
        .note(new Space(long_, T / 2, 1.5 * high + 20), "slide", Measure.words("till it grips"))
        .note(new Space(long_, T / 2, high / 2), "clamps", Measure.words("none"));
  }

  static Scene spline(JointSizes sizes) {
    double half = sizes.middle("thickness-share") * T / 2;
    double deep = sizes.middle("depth") * LARGER;
    double from = WIDE + GAP / 2 - deep + 11;
    double right = WIDE + GAP + 22;
    return new Scene()
        .wood(grooved(0, WIDE, half, deep))
        .wood(
            Prism.block(
                new Space(from, 0, T / 2 - half),
                new Space(from + 2 * deep - 2, DEEP, T / 2 + half),
                Grain.X))
        .wood(mirrored(right, half, deep))
        .note(new Space(from + deep, 0, T / 2 + half), "strip", sizes.share("thickness-share"))
        .note(new Space(WIDE - deep / 2, 0, T / 2), "groove", sizes.mm("depth"));
  }

  static Scene tongue(JointSizes sizes) {
    double half = sizes.middle("thickness-share") * T / 2;
    double deep = sizes.middle("depth") * LARGER;
    double right = WIDE + GAP + deep;
    return new Scene()
        .wood(grooved(0, WIDE, half, deep))
        .wood(
            Prism.front(
                Grain.Y,
                0,
                DEEP,
                new Point(right, 0),
                new Point(right + WIDE, 0),
                new Point(right + WIDE, T),
                new Point(right, T),
                new Point(right, T / 2 + half),
                new Point(right - deep + 1, T / 2 + half),
                new Point(right - deep + 1, T / 2 - half),
                new Point(right, T / 2 - half)))
        .move(new Space(right - deep, 0, T / 2), new Space(WIDE + 4, 0, T / 2))
        .note(new Space(right - deep / 2, 0, T / 2), "tongue", sizes.share("thickness-share"))
        .note(new Space(WIDE - deep / 2, 0, T / 2), "groove", sizes.mm("depth"));
  }

  static Scene biscuit(JointSizes sizes) {
    double half = sizes.middle("thickness") * LARGER / 2;
    double deep = sizes.middle("depth") * LARGER;
    double length = sizes.middle("length") / 2;
    double middle = DEEP / 2;
    double at = WIDE + GAP / 2 + 12;
    double right = WIDE + GAP + 30;
    return board(new Scene(), 0)
        .mark(
            Face.Look.HOLE,
            onEdge(middle - length - 3, T / 2 - half),
            onEdge(middle + length + 3, T / 2 - half),
            onEdge(middle + length + 3, T / 2 + half),
            onEdge(middle - length - 3, T / 2 + half))
        .axis(new Space(WIDE, middle, T / 2), new Space(right, middle, T / 2))
        .round(
            new Prism(
                lens(at, middle, T / 2 + half, new Point(deep, length)),
                new Space(0, 0, -2 * half),
                Grain.NONE),
            "drw-stock drw-top")
        .wood(block(right))
        .note(new Space(at, middle, T / 2 + half), "wafer", sizes.mm("thickness"))
        .note(new Space(WIDE, middle - length, T / 2), "slot deep", sizes.mm("depth"));
  }

  /** The outline of a wafer from above: two arcs. */
  private static java.util.List<Space> lens(double x, double y, double z, Point half) {
    java.util.List<Space> corners = new java.util.ArrayList<>();
    for (int side = -1; side <= 1; side += 2) {
      for (int i = 0; i < 12; i++) {
        double share = -1 + i / 6.0;
        double out = half.x() * (1 - share * share) * 0.9 + half.x() * 0.1;
        corners.add(new Space(x - side * out, y - side * share * half.z(), z));
      }
    }
    java.util.Collections.reverse(corners);
    return corners;
  }

  static Scene dowel(JointSizes sizes) {
    double r = sizes.middle("thickness-share") * T / 2;
    double right = WIDE + GAP + 34;
    Scene scene = board(new Scene(), 0);
    double[] rows = {DEEP * 0.75, DEEP * 0.25};
    for (double y : rows) {
      scene.mark(Face.Look.HOLE, ring(WIDE, y, r).toArray(new Space[0]));
    }
    for (double y : rows) {
      scene.axis(new Space(WIDE, y, T / 2), new Space(right, y, T / 2));
      scene.round(
          new Prism(ring(right - 12, y, r), new Space(-30, 0, 0), Grain.NONE), "drw-stock drw-top");
    }
    return scene
        .wood(block(right))
        .note(new Space(right - 20, rows[1], T / 2 + r), "pin", sizes.share("thickness-share"))
        .note(new Space(WIDE, rows[0], T / 2), "hole deeper", sizes.mm("gap"));
  }

  static java.util.List<Space> ring(double x, double y, double r) {
    java.util.List<Space> ring = new java.util.ArrayList<>();
    for (int i = 0; i < 20; i++) {
      double a = 2 * Math.PI * i / 20;
      ring.add(new Space(x, y + r * Math.cos(a), T / 2 + r * Math.sin(a)));
    }
    return ring;
  }

  static Scene scarf(JointSizes sizes) {
    double slope = sizes.middle("slope");
    double thick = 15;
    double run = slope * thick;
    double stock = 26;
    double up = 30;
    return new Scene()
        .wood(
            Prism.front(
                Grain.X,
                0,
                46,
                new Point(0, 0),
                new Point(stock + run, 0),
                new Point(stock, thick),
                new Point(0, thick)))
        .wood(
            Prism.front(
                Grain.X,
                0,
                46,
                new Point(stock + run + 14, up),
                new Point(2 * stock + run + 14, up),
                new Point(2 * stock + run + 14, up + thick),
                new Point(stock + 14, up + thick)))
        .move(new Space(stock + run * 0.75, 20, up), new Space(stock + run * 0.72, 20, thick + 2))
        .note(new Space(stock + run * 0.6, 0, thick * 0.4), "slope", sizes.slope())
        .note(
            new Space(2 * stock + run + 14, 23, up + thick / 2), "grain", Measure.words("one way"));
  }

  private static Space onEdge(double y, double z) {
    return new Space(WIDE, y, z);
  }

  private static Scene board(Scene scene, double x) {
    return scene.wood(block(x));
  }

  private static Prism block(double x) {
    return Prism.block(new Space(x, 0, 0), new Space(x + WIDE, DEEP, T), Grain.Y);
  }

  private static Prism grooved(double x0, double x1, double half, double deep) {
    return Prism.front(
        Grain.Y,
        0,
        DEEP,
        new Point(x0, 0),
        new Point(x1, 0),
        new Point(x1, T / 2 - half),
        new Point(x1 - deep, T / 2 - half),
        new Point(x1 - deep, T / 2 + half),
        new Point(x1, T / 2 + half),
        new Point(x1, T),
        new Point(x0, T));
  }

  private static Prism mirrored(double x, double half, double deep) {
    return Prism.front(
        Grain.Y,
        0,
        DEEP,
        new Point(x, 0),
        new Point(x + WIDE, 0),
        new Point(x + WIDE, T),
        new Point(x, T),
        new Point(x, T / 2 + half),
        new Point(x + deep, T / 2 + half),
        new Point(x + deep, T / 2 - half),
        new Point(x, T / 2 - half));
  }
}
