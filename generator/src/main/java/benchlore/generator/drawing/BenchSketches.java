package benchlore.generator.drawing;

import java.util.List;

/** Sketches of hand work at the bench. */
final class BenchSketches {
  static final List<ShopSketch> ALL =
      List.of(
          new ShopSketch(
              "scraper-edge",
              186,
              BenchSketches::scraper,
              "Three sections of a scraper's edge: filed square; a burnisher tilted a "
                  + "little turns each corner into a hook; leaning forward, the hook lifts a "
                  + "shaving."),
          new ShopSketch(
              "spring-joint",
              172,
              BenchSketches::spring,
              "Two boards edge to edge, each hollow by a hair in the middle, drawn much too "
                  + "much; one clamp in the middle closes the whole joint."),
          new ShopSketch(
              "fillet",
              188,
              BenchSketches::fillet,
              "A section of two boards at right angles with a hollow fillet in the corner, "
                  + "drawn by a round tool."),
          new ShopSketch(
              "plane-pressure",
              158,
              BenchSketches::planing,
              "A plane going right along an edge, three times: starting, pressed down at "
                  + "the toe; in the middle, at both ends; leaving, at the heel."),
          new ShopSketch(
              "scraper-bowed",
              186,
              BenchSketches::scraping,
              "On the left a card scraper from above, bowed forward by two thumbs, pushed "
                  + "along the grain. On the right, from the side, it leans the way it goes and "
                  + "lifts a shaving."));

  private BenchSketches() {}

  private static void scraper(Svg svg) {
    svg.rect("drw-metal", 36, 62, 34, 80);
    svg.rect("drw-template", 10, 44, 86, 17);
    Arrows.movement(svg, new Point(30, 30), new Point(80, 30));
    svg.path("drw-metal", hooked(143, 62));
    svg.path("drw-metal", tilted(104, 61, 112, -8));
    Arrows.movement(svg, new Point(196, 26), new Point(146, 33));
    svg.rect("drw-stock", 222, 128, 92, 22);
    for (double y = 134; y < 150; y += 6) {
      svg.line("drw-hatch", 226, y, 310, y);
    }
    svg.path("drw-metal", leaning());
    svg.path("drw-edge", "M260 127q-12 -2 -13 -14q-1 -10 -9 -9q-6 2 -4 8");
    Arrows.movement(svg, new Point(312, 78), new Point(278, 78));
    svg.text("middle", 53, 162, "file square");
    svg.text("middle", 53, 176, "then stone");
    svg.text("middle", 160, 162, "turn both");
    svg.text("middle", 160, 176, "corners");
    svg.text("middle", 268, 166, "lean and");
    svg.text("middle", 268, 180, "push");
  }

  /** Steel whose corners are turned outwards. */
  private static String hooked(double x, double y) {
    return "M"
        + Svg.pair(x, 142)
        + "L"
        + Svg.pair(x, y + 10)
        + "q0 -4 -6 -3q1 -7 8 -8L"
        + Svg.pair(x + 32, y - 1)
        + "q7 1 8 8q-6 -1 -6 3L"
        + Svg.pair(x + 34, 142)
        + "Z";
  }

  /** A round rod seen from its side, tilted. */
  private static String tilted(double x, double y, double length, double rise) {
    return new Trail(x, y)
        .to(x + length, y + rise)
        .to(x + length, y + rise - 11)
        .to(x, y - 11)
        .closed();
  }

  /** Leaning the way it is pushed, to the left, its hook in the wood. */
  private static String leaning() {
    return "M268 128L261 127.5q1 -5 5 -8L242 54L252 50L277 124Z";
  }

  private static void spring(Svg svg) {
    svg.path("drw-stock", "M20 20L300 20L300 66Q160 46 20 66Z");
    svg.path("drw-stock", "M20 72Q160 92 300 72L300 118L20 118Z");
    for (double y = 28; y < 52; y += 8) {
      svg.line("drw-hatch", 26, y, 294, y);
    }
    for (double y = 88; y < 116; y += 8) {
      svg.line("drw-hatch", 26, y, 294, y);
    }
    Arrows.movement(svg, new Point(160, 4), new Point(160, 26));
    Arrows.movement(svg, new Point(160, 136), new Point(160, 112));
    svg.text("middle", 160, 72, "light shows here");
    svg.text("start", 176, 134, "one clamp");
    svg.text("middle", 160, 152, "hollow by a hair, drawn far too much;");
    svg.text("middle", 160, 166, "the ends press hardest");
  }

  private static void fillet(Svg svg) {
    svg.rect("drw-stock", 30, 120, 190, 30);
    svg.rect("drw-stock", 30, 16, 30, 104);
    for (double y = 128; y < 148; y += 7) {
      svg.line("drw-hatch", 36, y, 214, y);
    }
    for (double x = 37; x < 58; x += 7) {
      svg.line("drw-hatch", x, 22, x, 114);
    }
    svg.path("drw-glue", "M60 76A44 44 0 0 0 104 120L60 120Z");
    svg.circle("drw-ghost", 104, 76, 44);
    svg.line("drw-axis", 104, 20, 104, 132);
    Dimensions dims = new Dimensions(svg);
    dims.callout(new Point(140, 52), "round tool", Measure.words("draws it"));
    dims.callout(new Point(72, 108), "fillet", Measure.words("stiff epoxy"));
    dims.finish(30, 130);
    svg.text("middle", 160, 176, "excess is lifted off both sides of the tool");
  }

  private static void planing(Svg svg) {
    String[] names = {"toe first", "both", "heel last"};
    for (int i = 0; i < names.length; i++) {
      double x = 14 + i * 105;
      Hatch.block(svg, x, 78, 82, 30);
      double plane = x - 12 + i * 24;
      svg.rect("drw-metal", plane, 68, 58, 10);
      svg.path("drw-wood", "M" + Svg.pair(plane + 6, 68) + "q4 -12 -2 -22h10q4 10 6 22Z");
      svg.circle("drw-wood", plane + 48, 62, 6);
      svg.path("drw-edge", new Trail(plane + 34, 78).to(plane + 24, 58).open());
      if (i < 2) {
        Arrows.movement(svg, new Point(plane + 48, 26), new Point(plane + 48, 52));
      }
      if (i > 0) {
        Arrows.movement(svg, new Point(plane + 9, 16), new Point(plane + 9, 42));
      }
      svg.text("middle", x + 41, 126, names[i]);
    }
    svg.text("middle", 160, 148, "going right: where the hands press");
  }

  private static void scraping(Svg svg) {
    svg.rect("drw-stock", 12, 12, 136, 126);
    for (double x = 20; x < 148; x += 9) {
      svg.line("drw-hatch", x, 16, x, 134);
    }
    svg.path("drw-cloth", "M70 134V98a7 7 0 0 1 14 0V134Z");
    svg.path("drw-cloth", "M88 134V98a7 7 0 0 1 14 0V134Z");
    svg.path("drw-metal", "M26 98Q80 70 134 98L134 104Q80 76 26 104Z");
    Arrows.movement(svg, new Point(80, 66), new Point(80, 26));
    Hatch.block(svg, 176, 108, 132, 30);
    svg.path("drw-metal", new Trail(222, 108).to(244, 34).to(250, 36).to(227, 108).closed());
    svg.path("drw-cloth", "M192 66L222 72a6 6 0 0 1 -3 12L190 80Z");
    svg.path("drw-ring drw-thick", "M227 107q18 -2 18 -16q1 -12 13 -10q8 3 2 10q-5 2 -6 -3");
    Arrows.movement(svg, new Point(262, 54), new Point(304, 54));
    svg.text("middle", 80, 156, "thumbs bow it");
    svg.text("middle", 242, 156, "lean it till it bites");
    svg.text("middle", 160, 178, "shavings: right; dust: turn a new hook");
  }
}
