package benchlore.generator.drawing;

import java.util.List;

/** Sketches of finishes put on by brush and cloth. */
final class BrushSketches {
  static final List<ShopSketch> ALL =
      List.of(
          new ShopSketch(
              "brushed-and-tipped",
              262,
              BrushSketches::brushing,
              "A brush dipped by a third; a panel from above with stripes of finish laid "
                  + "across the grain, then spread along it. Below, from the side, a nearly empty "
                  + "upright brush lands, glides over the film and lifts off."),
          new ShopSketch(
              "wet-edge",
              218,
              BrushSketches::wetEdge,
              "A panel from above, brushed in strips along its length, each just into the "
                  + "wet edge of the last. Below, two sections: over a wet edge the film flows "
                  + "level; over a set one it stands in a ridge, crossed out."),
          new ShopSketch(
              "wiped-thin",
              220,
              BrushSketches::wiping,
              "A panel from above: a folded cloth goes along the grain, off both ends, each "
                  + "stroke half over the last. Below, two sections: a thin film, and a thick one "
                  + "that sags, crossed out."),
          new ShopSketch(
              "oil-wiped-off",
              188,
              BrushSketches::oiling,
              "Three sections of wood: oil floods the face; it soaks in; a dry cloth wipes "
                  + "off all that is left on top."));

  private BrushSketches() {}

  private static void brushing(Svg svg) {
    load(svg);
    Hatch.block(svg, 118, 26, 90, 74);
    for (double x : new double[] {124, 152, 180}) {
      svg.rect("drw-film", x, 26, 20, 74);
    }
    Arrows.movement(svg, new Point(134, 88), new Point(134, 38));
    Arrows.movement(svg, new Point(162, 38), new Point(162, 88));
    Arrows.movement(svg, new Point(190, 88), new Point(190, 38));
    svg.rect("drw-film", 224, 26, 90, 74);
    for (double y : new double[] {40, 63, 86}) {
      boolean right = y != 63;
      Arrows.movement(svg, new Point(right ? 234 : 304, y), new Point(right ? 304 : 234, y));
    }
    svg.text("middle", 163, 118, "stripes across");
    svg.text("middle", 269, 118, "spread along");
    tipOff(svg);
  }

  private static void load(Svg svg) {
    Brush brush = Brush.broad(56, 80, 0);
    brush.draw(svg);
    svg.path("drw-glass", "M14 44h84l-6 56h-72Z");
    svg.path("drw-film", "M17 70h78l-3 29h-72Z");
    brush.wet(svg, 10);
    svg.text("middle", 56, 118, "dip a third, tap");
  }

  private static void tipOff(Svg svg) {
    Hatch.block(svg, 30, 210, 260, 22);
    svg.rect("drw-film", 30, 202, 260, 8);
    svg.path("drw-move", "M14 154Q38 196 80 197L120 197");
    Brush.narrow(148, 203, 14).draw(svg);
    svg.path("drw-move", "M184 197L240 197Q282 196 302 158");
    Arrows.big(svg, new Point(298, 165), new Point(304, 150));
    svg.text("start", 14, 146, "land, moving");
    svg.text("end", 310, 140, "lift off, moving");
    svg.text("middle", 160, 252, "then tip off: almost empty, one light stroke, end to end");
  }

  private static void wetEdge(Svg svg) {
    Hatch.block(svg, 16, 14, 288, 108);
    svg.rect("drw-film", 16, 14, 288, 32);
    svg.rect("drw-film", 16, 46, 288, 32);
    svg.rect("drw-film", 16, 74, 140, 32);
    svg.path("drw-shine", "M120 14h30l-40 64h-30Z");
    Brush.broad(158, 90, 90).draw(svg);
    Arrows.movement(svg, new Point(236, 90), new Point(264, 90));
    Arrows.pointer(svg, new Point(284, 106), new Point(284, 79));
    svg.text("end", 300, 117, "wet edge");
    svg.text("middle", 160, 140, "each strip just into the wet edge of the last");
    for (double x : new double[] {16, 176}) {
      Hatch.block(svg, x, 184, 128, 22);
    }
    svg.path("drw-film", "M16 184v-8h128v8Z");
    svg.path("drw-film", "M176 184v-8h68q8 2 10 8Z");
    svg.path("drw-film-deep", "M254 184q-3 -6 -12 -8q-8 0 -12 -8h74v16Z");
    svg.text("middle", 80, 166, "still wet: flows level");
    svg.text("middle", 240, 160, "set: a lap mark");
    Crossed.out(svg, 206, 166, 68, 42);
  }

  private static void wiping(Svg svg) {
    Hatch.block(svg, 30, 14, 260, 96);
    svg.rect("drw-film", 30, 14, 260, 30);
    svg.rect("drw-film", 30, 44, 260, 16);
    svg.rect("drw-film", 30, 60, 130, 16);
    svg.rect("drw-dimple", 30, 29, 260, 15);
    svg.rect("drw-dimple", 30, 45, 130, 15);
    Arrows.movement(svg, new Point(12, 29), new Point(308, 29));
    svg.rect("drw-cloth", 146, 44, 42, 34);
    svg.path("drw-thin", "M152 50h30M152 56h30M152 62h30M152 68h30");
    svg.line("drw-move", 12, 61, 142, 61);
    Arrows.movement(svg, new Point(192, 61), new Point(308, 61));
    svg.text("middle", 160, 128, "along the grain, off both ends, half over the last");
    for (double x : new double[] {30, 180}) {
      Hatch.block(svg, x, 170, 110, 22);
    }
    svg.rect("drw-film", 30, 167, 110, 3);
    svg.path("drw-film", "M180 170v-15h84q22 2 26 15v18q-4 12 -8 0l-1 -18Z");
    Crossed.out(svg, 206, 148, 60, 46);
    svg.text("middle", 85, 158, "thin, then leave it");
    svg.text("middle", 85, 210, "several thin coats");
    svg.text("middle", 235, 210, "not one thick one");
  }

  private static void oiling(Svg svg) {
    String[] names = {"flood it", "wait: it soaks in", "wipe it all off"};
    double[] soaked = {4, 20, 26};
    for (int i = 0; i < names.length; i++) {
      double x = 8 + i * 106;
      svg.rect("drw-stock", x, 56, 92, 48);
      svg.rect("drw-dimple", x + .6, 56, 90.8, soaked[i]);
      Hatch.level(svg, x + 5, x + 87, 64, 102);
      svg.text("middle", x + 46, 122, names[i]);
    }
    svg.path("drw-film-deep", "M8 56q-2 -8 6 -9h80q8 1 6 9Z");
    svg.path("drw-cloth", "M30 47q-8 -16 10 -20q14 -10 26 2q14 6 8 18Z");
    svg.path("drw-film-deep", "M114 56q0 -3 6 -4h30q4 0 5 4ZM170 56q2 -4 6 -4h20q8 1 10 4Z");
    for (double x : new double[] {138, 184}) {
      Arrows.movement(svg, new Point(x, 58), new Point(x, 82));
    }
    svg.path("drw-cloth", "M250 56q-4 -18 8 -22q14 -8 24 2q10 6 6 20Z");
    Arrows.movement(svg, new Point(228, 22), new Point(306, 22));
    svg.text("middle", 160, 144, "dry to the touch, nothing left on top;");
    svg.text("middle", 160, 158, "what stays on the surface never hardens");
    svg.text("middle", 160, 178, "oily cloths: flat outdoors, or under water");
  }
}
