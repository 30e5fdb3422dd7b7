package benchlore.generator.drawing;

import java.util.List;

/** Sketches of screws, and of what they hold. */
final class ScrewSketches {
  static final List<ShopSketch> ALL =
      List.of(
          new ShopSketch(
              "two-holes",
              176,
              ScrewSketches::pilot,
              "A section of two boards. On the left the holes: countersink and clearance in "
                  + "the near board, a narrower pilot in the far one. On the right the screw in "
                  + "them."),
          new ShopSketch(
              "solid-top",
              234,
              ScrewSketches::solidTop,
              "A table top from below. Screws on the middle line hold it; all others stand "
                  + "in slots that run across the grain, and arrows show both edges moving."),
          new ShopSketch(
              "hinge-leaf",
              176,
              ScrewSketches::hinge,
              "A section of a hinge leaf let in flush with the wood, its knuckle standing "
                  + "out past the edge; the screw's hole lies a hair to the back."));

  private ScrewSketches() {}

  private static void pilot(Svg svg) {
    Hatch.block(svg, 70, 30, 180, 46);
    Hatch.block(svg, 70, 77, 180, 66);
    svg.path(
        "drw-cut",
        new Trail(104, 30)
            .to(128, 30)
            .to(122, 40)
            .to(122, 76.5)
            .to(110, 76.5)
            .to(110, 40)
            .closed());
    svg.rect("drw-cut", 112.5, 76.5, 7, 50);
    screw(svg, 204);
    Arrows.pointer(svg, new Point(64, 26), new Point(104, 33));
    Arrows.pointer(svg, new Point(64, 58), new Point(109, 58));
    Arrows.pointer(svg, new Point(40, 104), new Point(111, 104));
    svg.text("start", 4, 20, "countersink");
    svg.text("start", 4, 55, "clearance");
    svg.text("start", 4, 98, "pilot");
    svg.text("start", 258, 52, "near:");
    svg.text("start", 258, 66, "slides");
    svg.text("start", 258, 104, "far:");
    svg.text("start", 258, 118, "bites");
    svg.text("middle", 160, 166, "clearance near, pilot far: the joint pulls shut");
  }

  private static void screw(Svg svg, double x) {
    svg.rect("drw-cut drw-plain", x - 6, 30.5, 12, 46);
    svg.path(
        "drw-metal",
        new Trail(x - 12, 30)
            .to(x + 12, 30)
            .to(x + 5, 41)
            .to(x + 5, 80)
            .to(x + 3.5, 84)
            .to(x + 3.5, 118)
            .to(x, 126)
            .to(x - 3.5, 118)
            .to(x - 3.5, 84)
            .to(x - 5, 80)
            .to(x - 5, 41)
            .closed());
    for (double y = 86; y < 116; y += 6) {
      svg.line("drw-edge", x - 6, y, x + 6, y + 3);
    }
  }

  private static void solidTop(Svg svg) {
    svg.rect("drw-stock", 16, 16, 288, 176);
    Hatch.level(svg, 22, 298, 24, 190);
    svg.rect("drw-wood", 46, 42, 228, 124);
    svg.rect("drw-stock", 66, 62, 188, 84);
    Hatch.level(svg, 72, 248, 70, 144);
    svg.line("drw-axis", 16, 104, 304, 104);
    for (double x : new double[] {56, 264}) {
      svg.circle("drw-brass", x, 104, 5);
      slot(svg, x, 66);
      slot(svg, x, 142);
    }
    for (double x : new double[] {110, 210}) {
      slot(svg, x, 52);
      slot(svg, x, 156);
    }
    Arrows.movement(svg, new Point(160, 92), new Point(160, 66));
    Arrows.movement(svg, new Point(160, 116), new Point(160, 142));
    svg.rect("drw-cut drw-plain", 172, 84, 76, 15);
    svg.text("start", 178, 95, "fixed line");
    svg.text("middle", 160, 210, "from below: slots run across the grain,");
    svg.text("middle", 160, 224, "so both edges can move");
  }

  private static void slot(Svg svg, double x, double y) {
    svg.path("drw-cut", "M" + Svg.pair(x - 4, y - 5) + "a4 4 0 0 1 8 0v10a4 4 0 0 1 -8 0Z");
    svg.circle("drw-brass", x, y, 3.5);
  }

  private static void hinge(Svg svg) {
    svg.path(
        "drw-stock",
        new Trail(30, 56).to(96, 56).to(96, 68).to(226, 68).to(226, 130).to(30, 130).closed());
    Hatch.level(svg, 36, 220, 76, 128);
    svg.rect("drw-brass", 96, 56, 128, 12);
    svg.path("drw-brass", "M224 56h10v12h-10Z");
    svg.circle("drw-brass", 240, 58, 13);
    svg.circle("drw-cut", 240, 58, 5);
    svg.path(
        "drw-metal",
        new Trail(144, 56)
            .to(168, 56)
            .to(160, 68)
            .to(159, 104)
            .to(155, 114)
            .to(151, 104)
            .to(151, 68)
            .closed());
    svg.line("drw-axis", 157, 44, 157, 120);
    Arrows.movement(svg, new Point(146, 34), new Point(112, 34));
    Arrows.pointer(svg, new Point(196, 30), new Point(196, 55));
    Arrows.pointer(svg, new Point(274, 92), new Point(250, 69));
    svg.text("middle", 210, 24, "leaf flush");
    svg.text("start", 30, 24, "pilot a hair to the back");
    svg.text("start", 236, 106, "knuckle");
    svg.text("start", 236, 120, "stands out");
    svg.text("middle", 160, 152, "too deep, and the door springs open;");
    svg.text("middle", 160, 166, "too shallow, and the gap is wide");
  }
}
