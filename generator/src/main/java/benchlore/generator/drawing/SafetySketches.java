package benchlore.generator.drawing;

import java.util.List;

/** Sketches of what keeps people from harm. */
final class SafetySketches {
  static final List<ShopSketch> ALL =
      List.of(
          new ShopSketch(
              "air-through-a-garage",
              230,
              SafetySketches::air,
              "A garage from above. Clean air comes in at an open door, passes the painter, "
                  + "then the work, and a fan built for vapour pulls it out on the far side; the "
                  + "door to the house is shut."),
          new ShopSketch(
              "oily-rags",
              214,
              SafetySketches::rags,
              "Oily cloths hang flat and singly on a line outdoors, or lie under water in a "
                  + "lidded metal can; a heap of them, giving off heat, is crossed out."));

  private SafetySketches() {}

  private static void air(Svg svg) {
    svg.rect("drw-template", 26, 30, 254, 150);
    svg.rect("drw-cut", 34, 38, 238, 134);
    svg.rect("drw-cut drw-plain", 25, 66, 10, 78);
    svg.rect("drw-wood", 62, 29, 54, 8);
    Hatch.block(svg, 164, 82, 46, 46);
    painter(svg, new Point(118, 105));
    fan(svg);
    for (double y : new double[] {78, 105, 132}) {
      Arrows.movement(svg, new Point(8, y), new Point(62, y));
    }
    Arrows.movement(svg, new Point(78, 66), new Point(150, 66));
    Arrows.movement(svg, new Point(78, 150), new Point(150, 150));
    Arrows.movement(svg, new Point(216, 88), new Point(258, 99));
    Arrows.movement(svg, new Point(216, 122), new Point(258, 111));
    svg.text("start", 40, 20, "house door shut");
    svg.text("middle", 187, 144, "work");
    svg.text("start", 8, 198, "clean air in");
    svg.text("end", 312, 198, "fan built for vapour");
    svg.text("middle", 160, 218, "the air meets you first, then the work");
  }

  private static void painter(Svg svg, Point at) {
    svg.rect("drw-metal", at.x() + 8, at.z() + 5, 20, 5);
    svg.path(
        "drw-cone",
        new Trail(at.x() + 28, at.z() + 7).to(164, at.z() - 12).to(164, at.z() + 22).closed());
    svg.path(
        "drw-body",
        "M"
            + Svg.pair(at.x(), at.z() - 22)
            + "q16 2 14 22q2 20 -14 22q-13 -2 -12 -22q-1 -20 12 -22Z");
    svg.circle("drw-wood", at.x() + 1, at.z(), 9);
  }

  private static void fan(Svg svg) {
    svg.rect("drw-metal", 266, 86, 34, 38);
    svg.path("drw-dark", "M282 105q-6 -10 0 -16q6 6 0 16q6 10 0 16q-6 -6 0 -16Z");
    Arrows.movement(svg, new Point(292, 105), new Point(317, 105));
  }

  private static void rags(Svg svg) {
    svg.line("drw-ring", 8, 22, 168, 22);
    for (double x : new double[] {16, 68, 120}) {
      svg.path("drw-cloth", "M" + Svg.pair(x, 22) + "h38v52q-10 4 -19 0q-10 -4 -19 0Z");
      svg.rect("drw-wood", x + 4, 17, 4, 10);
      svg.rect("drw-wood", x + 30, 17, 4, 10);
    }
    svg.text("middle", 88, 96, "outdoors, flat, one by one");
    svg.rect("drw-metal", 212, 26, 76, 54);
    svg.rect("drw-glass", 216, 38, 68, 38);
    svg.path("drw-cloth", "M226 70q-4 -10 8 -12q6 -10 16 -3q14 -5 16 6q10 4 4 11q-22 4 -44 -2Z");
    svg.rect("drw-metal", 206, 18, 88, 8);
    svg.rect("drw-metal", 242, 10, 16, 8);
    svg.text("middle", 250, 96, "under water,");
    svg.text("middle", 250, 110, "lidded metal can");
    svg.path("drw-cloth", "M92 180q-8 -18 14 -22q8 -24 34 -20q24 -14 44 4q28 -2 32 20q18 8 8 18Z");
    svg.path(
        "drw-thin",
        "M106 160q14 2 22 14M140 140q-2 16 16 22M184 142q-14 12 -6 30M216 162q-16 0 -20 14");
    for (double x : new double[] {136, 158, 180}) {
      svg.path("lad-moment", "M" + Svg.pair(x, 130) + "q-5 -6 0 -11q5 -6 0 -11");
    }
    svg.line("lad-moment drw-thick", 98, 124, 218, 186);
    svg.line("lad-moment drw-thick", 218, 124, 98, 186);
    svg.text("middle", 158, 204, "never a heap: it heats itself");
  }
}
