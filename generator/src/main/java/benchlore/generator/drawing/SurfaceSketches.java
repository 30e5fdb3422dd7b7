package benchlore.generator.drawing;

import java.util.List;

/** Sketches of bare wood: seeing it, mending it, sealing it. */
final class SurfaceSketches {
  static final List<ShopSketch> ALL =
      List.of(
          new ShopSketch(
              "raking-light",
              170,
              SurfaceSketches::raking,
              "A board from the side, lit by a lamp held low. Two humps and a scratch throw "
                  + "shadows away from the lamp; the eye looks from as low."),
          new ShopSketch(
              "dent-steamed",
              164,
              SurfaceSketches::dent,
              "Three sections: fibres pressed down in a dent; a wet cloth over it touched "
                  + "by the tip of an iron; the fibres swollen to just proud of the face."),
          new ShopSketch(
              "thirsty-ends",
              176,
              SurfaceSketches::endGrain,
              "A section along a board. Its tubes are open at the bare end and soak up "
                  + "finish far into the wood; at the sealed end they are plugged."));

  private SurfaceSketches() {}

  private static void raking(Svg svg) {
    svg.path(
        "drw-stock",
        "M16 104L84 104q10 -12 20 0L152 104l4 8l4 -8L196 104q14 -14 28 0L304 104L304 140L16 140Z");
    svg.path("drw-dark", "M96 98.5Q101 100 104 104L134 104Z");
    svg.path("drw-dark", "M152 104L156 112L158 108Z");
    svg.path("drw-dark", "M212 97Q220 99 224 104L254 104Z");
    Hatch.level(svg, 22, 298, 118, 138);
    svg.path("drw-metal", "M14 70L40 78L36 98L10 90Z");
    svg.path("drw-brass", "M40 78q8 12 -4 20Z");
    for (double y : new double[] {92, 98, 104}) {
      svg.line("drw-dim", 48, y - 6, y == 98 ? 290 : 286, y - 2 + (y - 98) / 3);
    }
    eye(svg);
    svg.text("start", 10, 60, "lamp low");
    svg.text("end", 310, 60, "eye as low");
    svg.text("middle", 160, 44, "humps and scratches");
    svg.text("middle", 160, 58, "throw shadows");
    svg.text("middle", 160, 160, "bumps drawn far too large; move the lamp round");
  }

  private static void eye(Svg svg) {
    svg.path("drw-cut", "M284 84q14 -14 28 0q-14 14 -28 0Z");
    svg.circle("drw-dark", 294, 84, 4);
  }

  private static void dent(Svg svg) {
    String[] names = {"crushed, not cut", "wet cloth, iron tip", "swollen: leave"};
    String[] more = {"", "a second or two", "a day, then level"};
    for (int i = 0; i < names.length; i++) {
      double x = 6 + i * 106;
      double[] dips = {16, 9, -3};
      svg.path("drw-stock", "M" + Svg.pair(x, 70) + "h22" + dip(dips[i]) + "h22v52h-96Z");
      for (int line = 1; line < 5; line++) {
        double y = 70 + line * 10;
        double share = dips[i] * (1 - line * 0.22);
        svg.path("drw-hatch", "M" + Svg.pair(x + 4, y) + "h18" + dip(share) + "h18");
      }
      svg.text("middle", x + 48, 140, names[i]);
      if (!more[i].isEmpty()) {
        svg.text("middle", x + 48, 154, more[i]);
      }
    }
    svg.path("drw-cloth", "M130 70h60v-9h-60Z");
    svg.path("drw-glass", "M134 70q26 16 52 0Z");
    svg.path("drw-metal", "M152 60L206 36L212 44L164 60Z");
    svg.path("drw-dark", "M176 44q6 -22 30 -24l4 8q-18 2 -20 14Z");
    svg.path("drw-thin", "M136 54q-5 -6 0 -12q5 -6 0 -12M146 52q-5 -6 0 -12q5 -6 0 -12");
  }

  /** A hollow 52 wide. */
  private static String dip(double depth) {
    String down = Num.of(depth);
    return "c14 0 14 " + down + " 26 " + down + "s12 " + Num.of(-depth) + " 26 " + Num.of(-depth);
  }

  private static void endGrain(Svg svg) {
    svg.rect("drw-stock", 40, 44, 240, 84);
    for (double y = 50; y < 128; y += 12) {
      svg.rect("drw-cut", 40, y, 240, 5);
      svg.rect("drw-film", 280 - 70 + y % 5 * 6, y, 70 - y % 5 * 6, 5);
      svg.rect("drw-film", 40, y, 10, 5);
    }
    svg.rect("drw-film-deep", 30, 42, 10, 88);
    for (double y : new double[] {64, 86, 108}) {
      Arrows.movement(svg, new Point(312, y), new Point(286, y));
    }
    svg.text("start", 16, 24, "sealed: pores plugged");
    svg.text("end", 308, 24, "bare: drinks deep");
    svg.text("middle", 160, 152, "the wood's tubes run along the board");
    svg.text("middle", 160, 166, "and are open at its ends");
  }
}
