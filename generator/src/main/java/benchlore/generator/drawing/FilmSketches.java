package benchlore.generator.drawing;

import java.util.List;

/** Sketches of films on wood, in section and far too thick. */
final class FilmSketches {
  static final List<ShopSketch> ALL =
      List.of(
          new ShopSketch(
              "nibs-levelled",
              190,
              FilmSketches::betweenCoats,
              "A section of a film on wood. A block with paper levels the nibs and stops "
                  + "short of the edge, where the film is thinnest."),
          new ShopSketch(
              "wet-sanding",
              190,
              FilmSketches::wetSanding,
              "Two sections of a film on wood. Above, a wet block has cut the tops and "
                  + "hollows still shine; below, the film is level, thinner, and still covers the "
                  + "wood."),
          new ShopSketch(
              "pores-filled",
              164,
              FilmSketches::grainFilling,
              "Three sections of open-grained wood: pores open; a blade packs filler into "
                  + "them; wiped level, filler in the pores only."),
          new ShopSketch(
              "tape-pulled",
              202,
              FilmSketches::masking,
              "Above, tape beside a soft film is folded back low over itself and pulled "
                  + "slowly. Below, a section across the line: the pressed edge of the tape keeps "
                  + "the film out."),
          new ShopSketch(
              "second-pot",
              174,
              FilmSketches::mixing,
              "Two pots. In the first a stick scrapes what clings to the sides and the "
                  + "bottom; the mix is tipped into a clean pot and stirred again."),
          new ShopSketch(
              "polishing-paths",
              168,
              FilmSketches::polishing,
              "A panel from above with the paths of a pad: straight strokes that glide on "
                  + "and off the edge, then circles, then figures of eight."));

  private FilmSketches() {}

  private static void betweenCoats(Svg svg) {
    Hatch.block(svg, 16, 92, 262, 54);
    svg.path(
        "drw-film",
        "M16 92L16 72L150 72q6 -10 12 0L182 72q7 -14 14 0L222 72q5 -9 10 0L258 72"
            + "Q274 76 281 90L284 146L278 146L278 92Z");
    svg.rect("drw-wood", 70, 36, 74, 30);
    svg.rect("drw-cloth", 70, 66, 74, 6);
    Arrows.movement(svg, new Point(84, 22), new Point(132, 22));
    svg.line("drw-removed", 252, 40, 252, 92);
    Arrows.pointer(svg, new Point(294, 58), new Point(279, 82));
    svg.text("start", 160, 52, "nibs");
    svg.text("end", 312, 34, "stop short");
    svg.text("end", 312, 50, "thin");
    svg.text("middle", 160, 166, "nibs off and dull all over, no deeper;");
    svg.text("middle", 160, 180, "the edge is where paper breaks through");
  }

  private static void wetSanding(Svg svg) {
    Hatch.block(svg, 16, 66, 288, 20);
    svg.path("drw-film", "M16 66L16 36" + "h22q8 10 16 0".repeat(7) + "h22L304 66Z");
    svg.path("drw-shine-line", "M42 39q4 3 8 0m30 0q4 3 8 0m30 0q4 3 8 0m30 0q4 3 8 0");
    svg.rect("drw-wood", 196, 6, 74, 24);
    svg.rect("drw-cloth", 196, 30, 74, 6);
    svg.path("drw-glass", "M180 36q2 -8 16 -6v6Z");
    svg.path("drw-glass", "M286 36q-2 -8 -16 -6v6Z");
    svg.text("start", 16, 24, "hollows still shine");
    Hatch.block(svg, 16, 140, 288, 20);
    svg.rect("drw-film", 16, 120, 288, 20);
    svg.line("drw-removed", 16, 110, 304, 110);
    svg.text("start", 16, 104, "where it began");
    svg.text("middle", 160, 180, "one even dull: stop, film must be left");
  }

  private static void grainFilling(Svg svg) {
    String[] names = {"pores open", "filler packed in", "wiped level"};
    for (int i = 0; i < names.length; i++) {
      double x = 8 + i * 105;
      svg.path("drw-stock", pores(x, 52, true));
      if (i > 0) {
        svg.path("drw-glue", pores(x, 52, false) + (i == 1 ? "M" + smear(x) : ""));
      }
      svg.text("middle", x + 47, 118, names[i]);
    }
    svg.path("drw-metal", new Trail(168, 43).to(176, 43).to(200, 8).to(192, 5).closed());
    Arrows.movement(svg, new Point(164, 26), new Point(132, 26));
    svg.text("middle", 160, 140, "across the pores at a slant, sand when hard;");
    svg.text("middle", 160, 154, "filler stays in the pores, none on the wood");
  }

  /** Wood with five pores open at its face, or what fills them. */
  private static String pores(double x, double y, boolean wood) {
    StringBuilder d = new StringBuilder();
    for (int i = 0; i < 5; i++) {
      double left = x + 6 + i * 18;
      d.append(wood && i > 0 ? "L" : "M").append(Svg.pair(left, y));
      d.append("q-1 ").append(Num.of(16 + i % 2 * 8)).append(" 5 ").append(Num.of(17 + i % 2 * 8));
      d.append("q6 -1 5 ").append(Num.of(-17 - i % 2 * 8)).append(wood ? "" : "Z");
    }
    return wood ? d + "L" + Svg.pair(x + 94, y) + "v48h-94v-48Z" : d.toString();
  }

  private static String smear(double x) {
    return Svg.pair(x, 52) + "v-3q30 -3 56 -4l1 -2h10v9Z";
  }

  private static void masking(Svg svg) {
    Hatch.block(svg, 16, 78, 288, 30);
    svg.rect("drw-film", 16, 70, 288, 8);
    svg.rect("drw-template", 130, 73, 174, 5);
    svg.path("drw-template", "M130 78q-12 -6 2 -14L262 34L264 39L136 69q-6 4 -2 9Z");
    Arrows.movement(svg, new Point(250, 24), new Point(304, 12));
    svg.text("start", 16, 22, "folded back,");
    svg.text("start", 16, 36, "low and slow");
    svg.text("start", 16, 62, "film still soft");
    Hatch.block(svg, 16, 146, 288, 26);
    svg.rect("drw-template", 160, 140, 110, 6);
    svg.path("drw-film", "M16 146L16 138L156 138Q162 134 172 134L250 134L250 140L160 140L160 146Z");
    Arrows.pointer(svg, new Point(190, 126), new Point(161, 143));
    svg.text("start", 192, 128, "press this edge");
    svg.text("middle", 160, 192, "above: pulling it; below: across the line");
  }

  private static void mixing(Svg svg) {
    cup(svg, 34);
    cup(svg, 200);
    svg.path("drw-film-deep", "M38 62L44 62L50 122L94 122L100 62L106 62L98 128L46 128Z");
    svg.path("drw-wood", "M92 118L98 120L126 22L119 20Z");
    svg.path("drw-wood", "M240 116L246 116L262 22L255 21Z");
    svg.path("drw-move", "M60 88q12 12 24 0");
    Arrows.big(svg, new Point(76, 92), new Point(87, 85));
    svg.path("drw-move", "M220 88q12 12 22 2");
    Arrows.big(svg, new Point(236, 94), new Point(245, 86));
    Arrows.movement(svg, new Point(130, 74), new Point(186, 74));
    svg.text("middle", 158, 64, "tip in");
    svg.text("middle", 72, 150, "scrape the sides");
    svg.text("middle", 72, 164, "and the bottom");
    svg.text("middle", 238, 150, "clean pot,");
    svg.text("middle", 238, 164, "stir again");
  }

  private static void cup(Svg svg, double x) {
    svg.path("drw-glass", "M" + Svg.pair(x, 36) + "h76l-10 94h-56Z");
    svg.path("drw-film", "M" + Svg.pair(x + 3, 62) + "h70l-8 66h-54Z");
  }

  private static void polishing(Svg svg) {
    Hatch.block(svg, 30, 16, 260, 104);
    svg.path(
        "drw-move",
        "M12 34L98 34Q108 34 108 44T98 54L40 54Q34 54 34 64T40 74L98 74Q108 74 108 84T98 94L14 94");
    Arrows.big(svg, new Point(20, 94), new Point(8, 94));
    svg.path("drw-move", "M128 50a18 18 0 1 1 36 0a18 18 0 1 1 -36 0");
    svg.path("drw-move", "M138 84a18 18 0 1 1 36 0a18 18 0 0 1 -34 8");
    Arrows.big(svg, new Point(146, 98), new Point(138, 89));
    svg.path("drw-move", "M236 66C196 20 276 20 236 66C196 112 276 112 236 66");
    Arrows.big(svg, new Point(242, 74), new Point(233, 62));
    svg.circle("drw-cloth", 226, 56, 13);
    svg.text("middle", 68, 138, "straight");
    svg.text("middle", 154, 138, "circles");
    svg.text("middle", 238, 138, "eights");
    svg.text("middle", 160, 158, "glide on, glide off, never stop a wet pad");
  }
}
