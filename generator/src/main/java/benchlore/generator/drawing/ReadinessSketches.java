package benchlore.generator.drawing;

import java.util.List;

/** Sketches of getting wood and finish ready, and of measuring both. */
final class ReadinessSketches {
  static final List<ShopSketch> ALL =
      List.of(
          new ShopSketch(
              "grain-raised",
              164,
              ReadinessSketches::raisedGrain,
              "Three sections of wood: fibres lying flat after sanding; standing up after "
                  + "water; cut off by a block with paper."),
          new ShopSketch(
              "sticks-in-line",
              190,
              ReadinessSketches::stickers,
              "Boards stacked on a flat base with sticks above one another, air between and "
                  + "a weight on top. Beside it a board on sticks out of line, bent, crossed out."),
          new ShopSketch(
              "stream-breaks",
              196,
              ReadinessSketches::cup,
              "A cup with a hole: filled to the brim in a pot; lifted clear with its stream "
                  + "whole and a watch started; its stream broken and the watch stopped."),
          new ShopSketch(
              "comb-in-the-film",
              190,
              ReadinessSketches::comb,
              "A section of a comb pressed through a wet film on to the wood. Some of its "
                  + "teeth, each a little shorter than the last, reach the film; the others stay "
                  + "dry."));

  private ReadinessSketches() {}

  private static void raisedGrain(Svg svg) {
    String[] names = {"sanded", "wetted, dried", "sanded once more"};
    String[] more = {"fibres lie flat", "they stand up", "cut off, no deeper"};
    for (int i = 0; i < names.length; i++) {
      double x = 8 + i * 106;
      Hatch.block(svg, x, 66, 92, 36);
      for (double at = 8; at < 88; at += 10) {
        String[] fibres = {"q3 -5 11 -3", "q-2 -10 6 -17", "q0 -2 1 -3"};
        svg.path("drw-ring drw-thick", "M" + Svg.pair(x + at, 66) + fibres[i]);
      }
      svg.text("middle", x + 46, 120, names[i]);
      svg.text("middle", x + 46, 134, more[i]);
    }
    for (double x : new double[] {132, 160, 188}) {
      svg.path("drw-glass", "M" + Svg.pair(x, 20) + "q-8 13 0 16q8 -3 0 -16Z");
    }
    svg.rect("drw-wood", 240, 32, 52, 24);
    svg.rect("drw-cloth", 240, 56, 52, 4);
    Arrows.movement(svg, new Point(246, 18), new Point(288, 18));
    svg.text("middle", 160, 156, "one even wetting, dry overnight, two light strokes");
  }

  private static void stickers(Svg svg) {
    svg.rect("drw-iron", 34, 12, 120, 16);
    for (int board = 0; board < 4; board++) {
      double y = 28 + board * 26;
      Hatch.block(svg, 14, y, 160, 16);
      for (double x : new double[] {26, 88, 150}) {
        svg.rect("drw-wood", x, y + 16, 10, 10);
      }
    }
    svg.rect("drw-metal", 8, 132, 172, 10);
    for (double y : new double[] {49, 75, 101}) {
      Arrows.movement(svg, new Point(40, y), new Point(84, y));
      Arrows.movement(svg, new Point(102, y), new Point(146, y));
    }
    svg.path("drw-stock", "M204 72Q259 104 314 72V88Q259 120 204 88Z");
    svg.rect("drw-wood", 204, 88, 10, 18);
    svg.rect("drw-wood", 304, 88, 10, 18);
    svg.rect("drw-wood", 254, 72, 10, 16);
    svg.rect("drw-metal", 198, 106, 120, 8);
    Hatch.block(svg, 204, 56, 110, 16);
    Crossed.out(svg, 226, 52, 66, 60);
    svg.text("middle", 94, 160, "sticks in line, air between");
    svg.text("middle", 258, 132, "out of line:");
    svg.text("middle", 258, 146, "it dries bent");
    svg.text("middle", 160, 182, "a weight on top keeps the upper boards flat");
  }

  private static void cup(Svg svg) {
    String[] names = {"fill to the brim", "lift clear: start", "first break: stop"};
    for (int i = 0; i < names.length; i++) {
      double x = 8 + i * 106;
      svg.path("drw-glass", "M" + Svg.pair(x + 12, 92) + "h68l-6 56h-56Z");
      svg.path("drw-film", "M" + Svg.pair(x + 14, 114) + "h64l-4 33h-56Z");
      svg.text("middle", x + 46, 168, names[i]);
    }
    viscosityCup(svg, 54, 104);
    svg.path("drw-film", "M38 104h32v3h-32Z");
    viscosityCup(svg, 160, 36);
    svg.path("drw-film", "M144 36h32v3h-32Z");
    viscosityCup(svg, 266, 36);
    svg.path("drw-film", "M158 70h4v46h-4Z");
    svg.path("drw-film", "M264.5 70h3l-.5 12h-2ZM265 88h2v6h-2ZM265 99h2v4h-2ZM265 108h2v3h-2Z");
    watch(svg, 126, 46, 0);
    watch(svg, 232, 46, 130);
    svg.text("middle", 160, 188, "the fewer seconds in between, the thinner it is");
  }

  /** A cup with a hole in its cone, its middle and brim given. */
  private static void viscosityCup(Svg svg, double x, double y) {
    svg.path("drw-metal", "M" + Svg.pair(x - 18, y) + "h36v18l-15 16h-6l-15 -16Z");
    svg.path("drw-edge", "M" + Svg.pair(x - 18, y) + "q18 -50 36 0");
  }

  private static void watch(Svg svg, double x, double y, double degrees) {
    svg.rect("drw-metal", x - 3, y - 18, 6, 5);
    svg.circle("drw-cut", x, y, 13);
    double turn = Math.toRadians(degrees);
    svg.line("drw-edge", x, y, x + 9 * Math.sin(turn), y - 9 * Math.cos(turn));
  }

  private static void comb(Svg svg) {
    Hatch.block(svg, 16, 122, 288, 26);
    svg.rect("drw-film", 16, 100, 288, 22);
    Trail outline = new Trail(40, 30).to(280, 30).to(280, 122).to(256, 122).to(256, 78);
    for (int i = 0; i < 6; i++) {
      double x = 242 - i * 30;
      double tip = 85 + i * 6;
      outline.to(x, 78).to(x, tip).to(x - 18, tip).to(x - 18, 78);
    }
    svg.path("drw-metal", outline.to(64, 78).to(64, 122).to(40, 122).closed());
    for (int i = 3; i < 6; i++) {
      svg.rect("drw-film-deep", 224 - i * 30, 100, 18, i * 6 - 15);
    }
    svg.path("drw-pencil", "M143 56V98M173 56V92");
    svg.text("end", 150, 48, "last wet");
    svg.text("start", 166, 48, "first dry");
    Arrows.movement(svg, new Point(160, 4), new Point(160, 26));
    svg.text("start", 172, 20, "straight to the wood");
    svg.text("middle", 160, 168, "lift it straight up; the coat is thicker than");
    svg.text("middle", 160, 182, "the wet tooth says and thinner than the dry one");
  }
}
