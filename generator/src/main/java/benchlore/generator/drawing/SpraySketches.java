package benchlore.generator.drawing;

import java.util.List;

/** Sketches of spraying. */
final class SpraySketches {
  static final List<ShopSketch> ALL =
      List.of(
          new ShopSketch(
              "spray-path",
              268,
              SpraySketches::path,
              "From above. A gun moved in a straight line square to the board covers "
                  + "evenly; swung in an arc it is wet in the middle and dry at the ends."),
          new ShopSketch(
              "fan-patterns",
              168,
              SpraySketches::patterns,
              "Five test patterns: an even oval; heavy in the middle; split into two; bent "
                  + "like a banana; heavy on one side."));

  private SpraySketches() {}

  private static void path(Svg svg) {
    board(svg, 18);
    for (double x : new double[] {70, 160, 250}) {
      fan(svg, new Point(x, 88), new Point(x - 34, 31), new Point(x + 34, 31));
    }
    Arrows.movement(svg, new Point(84, 96), new Point(146, 96));
    Arrows.movement(svg, new Point(174, 96), new Point(236, 96));
    svg.text("middle", 160, 124, "straight, square on: even");
    board(svg, 148);
    fan(svg, new Point(160, 210), new Point(128, 161), new Point(192, 161));
    fan(svg, new Point(78, 228), new Point(22, 161), new Point(72, 161));
    fan(svg, new Point(242, 228), new Point(248, 161), new Point(298, 161));
    svg.path("drw-move", "M88 224Q160 206 226 223");
    Arrows.big(svg, new Point(216, 220.5), new Point(228, 223.8));
    svg.text("middle", 160, 256, "in an arc: wet in the middle, dry at the ends");
  }

  private static void board(Svg svg, double y) {
    svg.rect("drw-stock", 16, y, 288, 13);
    svg.line("drw-hatch", 20, y + 5, 300, y + 5);
    svg.line("drw-hatch", 20, y + 9, 300, y + 9);
  }

  private static void fan(Svg svg, Point gun, Point left, Point right) {
    svg.path(
        "drw-cone",
        new Trail(gun.x(), gun.z()).to(left.x(), left.z()).to(right.x(), right.z()).closed());
    double middle = (left.x() + right.x()) / 2;
    double length = Math.hypot(gun.x() - middle, gun.z() - left.z());
    double ux = (gun.x() - middle) / length;
    double uz = (gun.z() - left.z()) / length;
    double bx = gun.x() + ux * 16;
    double bz = gun.z() + uz * 16;
    svg.path(
        "drw-metal",
        new Trail(gun.x() - uz * 4, gun.z() + ux * 4)
            .to(gun.x() + uz * 4, gun.z() - ux * 4)
            .to(bx + uz * 6, bz - ux * 6)
            .to(bx - uz * 6, bz + ux * 6)
            .closed());
  }

  private static void patterns(Svg svg) {
    String[] names = {"even", "heavy", "split", "banana", "one side"};
    String[] more = {"good", "more air", "more fluid", "clean horn", "clean tip"};
    for (int i = 0; i < names.length; i++) {
      double x = 34 + i * 63;
      shape(svg, i, x);
      svg.text("middle", x, 142, names[i]);
      svg.text("middle", x, 158, more[i]);
    }
  }

  private static void shape(Svg svg, int pattern, double x) {
    switch (pattern) {
      case 0 -> svg.path("drw-cone", oval(x, 66, 15, 54));
      case 1 -> {
        svg.path("drw-cone", oval(x, 66, 15, 54));
        svg.path("drw-cone", oval(x, 66, 13, 22));
        svg.path("drw-cone", oval(x, 66, 10, 15));
      }
      case 2 -> {
        svg.path("drw-cone", oval(x, 36, 14, 24));
        svg.path("drw-cone", oval(x, 96, 14, 24));
      }
      case 3 ->
          svg.path(
              "drw-cone",
              "M"
                  + Svg.pair(x - 12, 12)
                  + "Q"
                  + Svg.pair(x + 34, 66)
                  + " "
                  + Svg.pair(x - 12, 120)
                  + "Q"
                  + Svg.pair(x + 4, 66)
                  + " "
                  + Svg.pair(x - 12, 12)
                  + "Z");
      default -> {
        svg.path("drw-cone", oval(x, 66, 15, 54));
        svg.path("drw-cone", oval(x, 94, 13, 24));
        svg.path("drw-cone", oval(x, 98, 10, 16));
      }
    }
  }

  private static String oval(double x, double y, double wide, double high) {
    String arc = "A" + Num.of(wide) + " " + Num.of(high) + " 0 1 0 ";
    return "M"
        + Svg.pair(x, y - high)
        + arc
        + Svg.pair(x, y + high)
        + arc
        + Svg.pair(x, y - high)
        + "Z";
  }
}
