package benchlore.generator.drawing;

import java.util.List;

/** Sketches of work with a router. */
final class RouterSketches {
  static final List<ShopSketch> ALL =
      List.of(
          new ShopSketch(
              "feed-round-a-part",
              250,
              RouterSketches::feed,
              "A frame from above. A hand router goes anticlockwise round its outside and "
                  + "clockwise round the opening inside; the bit turns clockwise."),
          new ShopSketch(
              "tabs-and-skin",
              244,
              RouterSketches::tabs,
              "Above, a section: one groove stops short and leaves a thin skin, the other "
                  + "goes through to the waste board with a tab standing in it. Below, the part "
                  + "from above, held by four tabs."),
          new ShopSketch(
              "router-sled",
              196,
              RouterSketches::sled,
              "Seen from the end: a board wedged still between two rails; a router on a "
                  + "sled slides over them and cuts down to one level plane."));

  private RouterSketches() {}

  private static void feed(Svg svg) {
    svg.rect("drw-stock", 56, 44, 208, 150);
    svg.rect("drw-cut", 108, 84, 104, 70);
    Hatch.level(svg, 62, 258, 52, 80);
    Hatch.level(svg, 62, 258, 162, 190);
    Arrows.movement(svg, new Point(112, 208), new Point(238, 208));
    Arrows.movement(svg, new Point(278, 176), new Point(278, 62));
    Arrows.movement(svg, new Point(208, 30), new Point(82, 30));
    Arrows.movement(svg, new Point(42, 62), new Point(42, 176));
    Arrows.movement(svg, new Point(134, 97), new Point(188, 97));
    Arrows.movement(svg, new Point(199, 106), new Point(199, 134));
    Arrows.movement(svg, new Point(188, 142), new Point(134, 142));
    Arrows.movement(svg, new Point(121, 134), new Point(121, 106));
    bit(svg, new Point(86, 206));
    svg.text("middle", 160, 117, "inside:");
    svg.text("middle", 160, 130, "clockwise");
    svg.text("middle", 160, 16, "outside: anticlockwise");
    svg.text("middle", 160, 242, "hand router from above, bit turns clockwise");
  }

  private static void bit(Svg svg, Point at) {
    svg.circle("drw-metal", at.x(), at.z(), 12);
    String arc = "A17 17 0 0 1 ";
    svg.path(
        "drw-move",
        "M" + Svg.pair(at.x() + 16, at.z() + 6) + arc + Svg.pair(at.x() - 8, at.z() + 15));
    Arrows.big(svg, new Point(at.x() + 2, at.z() + 17), new Point(at.x() - 9, at.z() + 14.5));
  }

  private static void tabs(Svg svg) {
    svg.rect("drw-template", 12, 72, 226, 18);
    svg.path(
        "drw-stock",
        new Trail(12, 24)
            .to(66, 24)
            .to(66, 66)
            .to(90, 66)
            .to(90, 24)
            .to(160, 24)
            .to(160, 72)
            .to(12, 72)
            .closed());
    svg.rect("drw-stock", 184, 24, 54, 48);
    svg.rect("drw-stock drw-side", 160, 56, 24, 16);
    Hatch.level(svg, 18, 60, 32, 70);
    Hatch.level(svg, 96, 154, 32, 70);
    Hatch.level(svg, 190, 232, 32, 70);
    Dimensions dims = new Dimensions(svg);
    dims.callout(new Point(78, 69), "skin", Measure.words("left thin"));
    dims.callout(new Point(172, 62), "tab", Measure.words("left thick"));
    dims.callout(new Point(220, 84), "waste", Measure.words("board"));
    dims.finish(22, 100);
    svg.rect("drw-stock", 12, 116, 296, 96);
    svg.path("drw-cut", frame(50, 132, 220, 64) + frame(60, 142, 200, 44));
    Hatch.level(svg, 68, 252, 150, 184);
    for (double x : new double[] {104, 204}) {
      svg.rect("drw-stock drw-side", x, 131.5, 14, 11);
      svg.rect("drw-stock drw-side", x, 185.5, 14, 11);
    }
    svg.text("middle", 160, 232, "tabs on long edges, sawn off and pared flush");
  }

  /** A rectangle as path data; two of them make a ring where their turns differ. */
  private static String frame(double x, double y, double wide, double high) {
    return new Trail(x, y).to(x + wide, y).to(x + wide, y + high).to(x, y + high).closed();
  }

  private static void sled(Svg svg) {
    svg.rect("drw-template", 8, 152, 304, 16);
    svg.rect("drw-template", 14, 84, 22, 68);
    svg.rect("drw-template", 284, 84, 22, 68);
    svg.path(
        "drw-stock",
        new Trail(64, 126).to(160, 110).to(256, 116).to(256, 144).to(64, 152).closed());
    svg.path(
        "drw-cut",
        new Trail(64, 126)
            .to(160, 110)
            .to(256, 116)
            .to(256, 128)
            .to(160, 128)
            .to(160, 110.5)
            .to(64, 126.5)
            .closed());
    svg.line("drw-removed", 64, 128, 256, 128);
    svg.path("drw-metal", new Trail(212, 152).to(256, 152).to(256, 144.5).closed());
    svg.rect("drw-template", 10, 74, 300, 10);
    svg.rect("drw-metal", 124, 34, 72, 40);
    svg.rect("drw-metal", 112, 48, 12, 12);
    svg.rect("drw-metal", 196, 48, 12, 12);
    svg.rect("drw-metal", 154, 74, 12, 42);
    svg.rect("drw-metal", 144, 114, 32, 14);
    Arrows.movement(svg, new Point(204, 100), new Point(250, 100));
    svg.text("middle", 160, 22, "router on its sled");
    svg.text("end", 122, 100, "one plane");
    svg.text("middle", 160, 188, "board wedged still, then turned over");
  }
}
