package benchlore.generator.drawing;

import java.util.List;

/** Sketches of glue: closing a joint, cleaning it, keeping oil out of it. */
final class GlueSketches {
  static final List<ShopSketch> ALL =
      List.of(
          new ShopSketch(
              "beads-lifted",
              160,
              GlueSketches::beads,
              "Three sections of a glued joint: a wet bead wiped with a wet cloth; half-set "
                  + "glue smeared into the pores, crossed out; a leathery bead lifted by a flat "
                  + "chisel."),
          new ShopSketch(
              "edge-glue-up",
              302,
              GlueSketches::edgeJoint,
              "Above, the end of four boards with beads of glue at each joint, one clamp "
                  + "over them and the next under them. Below, the panel from above: clamps over "
                  + "and under in turn, a caul across the end, a V drawn across the boards."),
          new ShopSketch(
              "oil-kept-out",
              162,
              GlueSketches::oily,
              "Four sections of oily wood: a fresh shaving taken; the face wiped; glue on "
                  + "both faces and closed; and, crossed out, a face left so long that oil has "
                  + "come back."));

  private GlueSketches() {}

  private static void beads(Svg svg) {
    String[] names = {"wet", "half set", "leathery"};
    String[] more = {"wipe at once", "hands off:", "lift it off"};
    for (int i = 0; i < names.length; i++) {
      double x = 8 + i * 106;
      Hatch.block(svg, x, 74, 46, 44);
      Hatch.block(svg, x + 46, 74, 46, 44);
      svg.rect("drw-glue", x + 44.5, 74, 3, 44);
      svg.text("middle", x + 46, 18, names[i]);
      svg.text("middle", x + 46, 136, more[i]);
    }
    svg.text("middle", 160, 150, "it smears");
    svg.path("drw-glue", "M46 74q-2 -9 8 -10q10 1 8 10Z");
    svg.path("drw-cloth", "M66 74q-6 -18 6 -24q14 -8 24 2q10 8 4 22Z");
    svg.path("drw-glass", "M86 34q-6 10 0 12q6 -2 0 -12Z");
    Arrows.movement(svg, new Point(60, 44), new Point(20, 44));
    svg.path(
        "drw-glue",
        "M124 74q10 -6 36 -5q26 -1 36 5v7q-4 4 -6 -6h-12q-2 14 -5 0h-24q-2 16 -5 0h-10q-4 10 -10 -1Z");
    Crossed.out(svg, 132, 46, 56, 60);
    svg.path("drw-glue", "M254 70q-4 -14 10 -17q14 0 14 12q-4 8 -14 8Z");
    svg.path("drw-metal", "M262 74L306 74L306 67L272 67Z");
    svg.path("drw-wood", "M306 66h12v9h-12Z");
    Arrows.movement(svg, new Point(312, 48), new Point(284, 48));
    svg.text("middle", 266, 150, "chisel laid flat");
  }

  private static void edgeJoint(Svg svg) {
    far(svg);
    double[] rings = {-1, 1, -1, 1};
    for (int i = 0; i < rings.length; i++) {
      double x = 52 + i * 54;
      svg.rect("drw-stock", x, 60, 54, 28);
      for (double r : new double[] {6, 13, 20}) {
        double middle = rings[i] > 0 ? 60 + r : 88 - r;
        String bow = "Q" + Svg.pair(x + 27, middle + rings[i] * 8) + " ";
        double end = middle - rings[i] * 5;
        svg.path("drw-ring", "M" + Svg.pair(x + 1, end) + bow + Svg.pair(x + 53, end));
      }
      if (i > 0) {
        svg.line("drw-move", x, 60, x, 88);
        svg.path("drw-glue", bead(x, 60, -4));
        svg.path("drw-glue", bead(x, 88, 4));
      }
    }
    svg.rect("drw-metal", 20, 30, 280, 8);
    svg.rect("drw-metal", 36, 30, 14, 62);
    svg.rect("drw-metal", 270, 30, 14, 62);
    Arrows.movement(svg, new Point(14, 74), new Point(34, 74));
    Arrows.movement(svg, new Point(306, 74), new Point(286, 74));
    svg.text("middle", 160, 22, "clamp above");
    svg.text("middle", 160, 138, "the next one below");
    panel(svg);
  }

  /** The clamp behind, which runs below. */
  private static void far(Svg svg) {
    svg.rect("drw-ghost", 20, 112, 280, 8);
    svg.rect("drw-ghost", 36, 58, 14, 62);
    svg.rect("drw-ghost", 270, 58, 14, 62);
  }

  private static String bead(double x, double y, double out) {
    return "M" + Svg.pair(x - 4, y) + "q4 " + Num.of(2 * out) + " 8 0Z";
  }

  /** From above: clamps in turn over and under, a V across the boards, cauls over the ends. */
  private static void panel(Svg svg) {
    for (double x : new double[] {112, 206}) {
      svg.rect("drw-ghost", x, 148, 10, 128);
    }
    for (double y = 160; y < 264; y += 26) {
      Hatch.block(svg, 30, y, 260, 26);
    }
    for (double y = 186; y < 264; y += 26) {
      for (double x = 38; x < 290; x += 12) {
        svg.circle("drw-glue", x, y, 2.2);
      }
    }
    svg.path("drw-pencil drw-thick", new Trail(84, 164).to(116, 260).to(148, 164).open());
    for (double x : new double[] {64, 159, 252}) {
      svg.rect("drw-metal", x, 148, 10, 128);
    }
    svg.rect("drw-wood", 32, 156, 14, 112);
    svg.rect("drw-wood", 274, 156, 14, 112);
    svg.text("middle", 39, 294, "caul");
    svg.text("middle", 281, 294, "caul");
    svg.text("middle", 117, 294, "below");
    svg.text("middle", 164, 294, "above");
    svg.text("middle", 211, 294, "below");
  }

  private static void oily(Svg svg) {
    String[] names = {"fresh cut", "wipe, dry", "glue now", "too late"};
    for (int i = 0; i < names.length; i++) {
      double x = 6 + i * 79;
      svg.rect("drw-stock", x, 70, 70, 44);
      Hatch.level(svg, x + 4, x + 66, 78, 112);
      for (int drop = 0; drop < 6; drop++) {
        double y = i == 3 ? 71 + drop % 2 * 3 : 92 + drop % 2 * 9 - i * 2;
        svg.circle("drw-film-deep", x + 8 + drop * 11, y, 3);
      }
      svg.text("middle", x + 35, 132, names[i]);
    }
    svg.path("drw-ring drw-thick", "M40 60q-6 -20 6 -24q12 0 9 10q-4 5 -8 0");
    svg.rect("drw-metal", 12, 60, 58, 10);
    svg.path("drw-wood", "M16 60q4 -10 -2 -20h9q5 9 5 20Z");
    svg.circle("drw-wood", 62, 55, 5);
    Arrows.movement(svg, new Point(16, 24), new Point(62, 24));
    svg.path("drw-cloth", "M98 70q-6 -18 8 -22q14 -8 24 2q10 8 4 20Z");
    Arrows.movement(svg, new Point(92, 30), new Point(146, 30));
    svg.rect("drw-glue", 164, 66, 70, 4);
    svg.rect("drw-stock", 164, 24, 70, 18);
    svg.rect("drw-glue", 164, 42, 70, 4);
    Arrows.movement(svg, new Point(199, 48), new Point(199, 63));
    Crossed.out(svg, 254, 44, 48, 48);
    svg.text("middle", 278, 34, "oil is back");
    svg.text("middle", 160, 154, "minutes from the cut to the clamps, not hours");
  }
}
