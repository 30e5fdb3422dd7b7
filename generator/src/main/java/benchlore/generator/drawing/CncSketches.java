package benchlore.generator.drawing;

import java.util.List;

/** Sketches of work on a CNC router. */
final class CncSketches {
  private static final int TEETH = 6;

  static final List<ShopSketch> ALL =
      List.of(
          new ShopSketch(
              "rough-then-finish",
              268,
              CncSketches::passes,
              "Two sections of a hollow. Above, a flat-ended bit roughs it in steps and "
                  + "leaves a skin over the dashed shape; below, a ball end in small steps leaves "
                  + "low ridges."),
          new ShopSketch(
              "spindle-lean",
              246,
              CncSketches::tram,
              "Above, a leaning cutter leaves a surface like saw teeth. Below, a cutter "
                  + "square to the board leaves it flat."),
          new ShopSketch(
              "surfacing-path",
              216,
              CncSketches::spoilboard,
              "A spoilboard from above. A wide cutter goes to and fro in straight passes, "
                  + "each overlapping the one before."),
          new ShopSketch(
              "v-depth",
              202,
              CncSketches::carving,
              "A section of three grooves cut by one V-shaped bit: the wider the groove, "
                  + "the deeper the bit goes."),
          new ShopSketch(
              "where-z-is-zero",
              178,
              CncSketches::zero,
              "Two set-ups from the side. For carving the bit touches the top of the wood; "
                  + "for cutting through a straight bit touches the spoilboard beside it."));

  private CncSketches() {}

  private static void passes(Svg svg) {
    svg.path("drw-stock", stairs());
    svg.path("drw-removed", "M40 24Q160 164 280 24");
    svg.rect("drw-metal", 141, 10, 38, 74);
    Hatch.level(svg, 24, 296, 104, 120);
    svg.text("start", 16, 16, "rough: steps");
    svg.text("end", 304, 16, "skin left");
    svg.path("drw-stock", scallops());
    svg.path("drw-metal", "M152 138L168 138L168 204A8 8 0 0 1 152 204Z");
    Hatch.level(svg, 24, 296, 222, 238);
    svg.text("start", 16, 136, "finish: ball end");
    svg.text("end", 304, 136, "small steps");
    svg.text("middle", 160, 258, "closer passes leave lower ridges");
  }

  /** Height of the finished hollow. */
  private static double hollow(double x, double top) {
    double t = (x - 40) / 240;
    return top + 280 * t * (1 - t);
  }

  /** Steps that nowhere reach below the hollow. */
  private static String stairs() {
    double[] level = {24, 38, 54, 70, 84};
    double[] inset = {40, 62, 82, 104, 128};
    Trail d = new Trail(16, 24);
    for (int i = 1; i < level.length; i++) {
      d.to(inset[i], level[i - 1]).to(inset[i], level[i]);
    }
    for (int i = level.length - 1; i > 0; i--) {
      d.to(320 - inset[i], level[i]).to(320 - inset[i], level[i - 1]);
    }
    return d.to(304, 24).to(304, 122).to(16, 122).closed();
  }

  private static String scallops() {
    StringBuilder d = new StringBuilder("M16 144L40 144");
    for (double x = 52; x <= 280; x += 12) {
      d.append("A12 12 0 0 0 ").append(Svg.pair(x, hollow(x, 144)));
    }
    return d + "L304 144L304 240L16 240Z";
  }

  private static void tram(Svg svg) {
    Trail saw = new Trail(16, 78);
    for (int i = 1; i <= TEETH; i++) {
      saw.to(16 + i * 48, 86).to(16 + i * 48, 78);
    }
    svg.path("drw-stock", saw.to(304, 106).to(16, 106).closed());
    svg.path("drw-metal", new Trail(160, 78).to(208, 86).to(212, 60).to(164, 52).closed());
    svg.path("drw-metal", new Trail(180, 55).to(196, 57.6).to(203, 12).to(187, 9.4).closed());
    svg.line("drw-axis", 185, 80, 197, 4);
    svg.text("start", 16, 52, "leaning: saw teeth");
    svg.rect("drw-stock", 16, 188, 288, 28);
    svg.rect("drw-metal", 160, 162, 48, 26);
    svg.rect("drw-metal", 176, 118, 16, 44);
    svg.line("drw-axis", 184, 114, 184, 200);
    svg.text("start", 16, 166, "square: flat");
    svg.text("middle", 160, 236, "the lean is drawn far too large");
  }

  private static void spoilboard(Svg svg) {
    svg.rect("drw-stock", 16, 16, 288, 170);
    for (int i = 0; i < 6; i++) {
      double y = 36 + i * 26;
      svg.rect("plan-pass", 18, y - 18, 284, 36);
    }
    for (int i = 0; i < 6; i++) {
      double y = 36 + i * 26;
      double from = i % 2 == 0 ? 36 : 284;
      Arrows.movement(svg, new Point(from, y), new Point(320 - from, y));
      if (i < 5) {
        svg.line("drw-move", 320 - from, y, 320 - from, y + 26);
      }
    }
    svg.circle("drw-metal", 36, 36, 18);
    svg.circle("drw-dark", 36, 36, 4);
    svg.text("middle", 160, 206, "one light depth; each pass overlaps the last");
  }

  private static void carving(Svg svg) {
    svg.rect("drw-stock", 16, 56, 288, 84);
    Hatch.level(svg, 22, 298, 118, 138);
    double[] centre = {54, 150, 256};
    double[] half = {10, 26, 44};
    for (int i = 0; i < centre.length; i++) {
      double x = centre[i];
      double h = half[i];
      svg.path("drw-cut", new Trail(x - h, 56).to(x, 56 + h).to(x + h, 56).closed());
      double lift = 56 + h - 46;
      svg.path(
          "drw-ghost",
          new Trail(x, 56 + h)
              .to(x + 46, lift)
              .to(x + 46, lift - 8)
              .to(x - 46, lift - 8)
              .to(x - 46, lift)
              .closed());
      Arrows.between(svg, new Point(x - h, 152), new Point(x + h, 152));
    }
    svg.text("middle", 54, 172, "narrow");
    svg.text("middle", 256, 172, "wide");
    svg.text("middle", 160, 192, "one bit, one face: depth follows width");
  }

  private static void zero(Svg svg) {
    svg.rect("drw-template", 10, 118, 140, 16);
    Hatch.block(svg, 28, 78, 104, 40);
    svg.path("drw-metal", new Trail(80, 78).to(96, 60).to(96, 20).to(64, 20).to(64, 60).closed());
    svg.line("drw-removed", 10, 78, 150, 78);
    svg.rect("drw-template", 170, 118, 140, 16);
    Hatch.block(svg, 182, 78, 76, 40);
    svg.rect("drw-metal", 274, 40, 20, 78);
    svg.line("drw-removed", 170, 118, 310, 118);
    svg.text("start", 12, 72, "zero");
    svg.text("start", 262, 34, "zero");
    svg.text("middle", 80, 154, "carving:");
    svg.text("middle", 80, 168, "top of the wood");
    svg.text("middle", 240, 154, "cutting through:");
    svg.text("middle", 240, 168, "the spoilboard");
  }
}
