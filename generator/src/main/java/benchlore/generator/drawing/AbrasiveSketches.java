package benchlore.generator.drawing;

import java.util.List;

/** Sketches of abrading wood and film. */
final class AbrasiveSketches {
  static final List<ShopSketch> ALL =
      List.of(
          new ShopSketch(
              "scratches-replaced",
              216,
              AbrasiveSketches::grits,
              "Three sections: coarse scratches; finer ones between the bottoms of coarse "
                  + "ones; fine ones alone. Under each the face with a pencil scribble: whole, "
                  + "partly left, gone."),
          new ShopSketch(
              "blocks-for-a-profile",
              198,
              AbrasiveSketches::profile,
              "The end of a moulding with a dowel wrapped in paper in its hollow and a "
                  + "hollowed block on its bead. Beside it fingers behind paper round off a sharp "
                  + "edge, crossed out."),
          new ShopSketch(
              "rubbed-to-satin",
              172,
              AbrasiveSketches::rubbing,
              "A finished panel from above. A block goes straight from end to end, each "
                  + "stroke half over the last; a strip along each edge is left for the end."),
          new ShopSketch(
              "quarter-turns",
              164,
              AbrasiveSketches::quarterTurns,
              "Four squares of film: lines one way; finer lines across them with two old "
                  + "ones left; the finest lines the first way; polished to a mirror."));

  private AbrasiveSketches() {}

  private static void grits(Svg svg) {
    String[] names = {"coarse grit", "next: too soon", "next: done"};
    String[] marks = {"pencil scribble", "some left: go on", "gone: next grit"};
    for (int i = 0; i < names.length; i++) {
      double x = 8 + i * 106;
      svg.rect("drw-wood", x + 22, 8, 48, 20);
      svg.rect("drw-cloth", x + 22, 28, 48, i == 0 ? 6 : 3);
      svg.path("drw-stock", scratched(x, i));
      svg.text("middle", x + 46, 108, names[i]);
      Hatch.block(svg, x, 122, 92, 46);
      svg.text("middle", x + 46, 186, marks[i]);
    }
    svg.line("drw-removed", 220, 46, 312, 46);
    svg.path("drw-pencil", "M14 156q8 -34 14 -6t14 -4t14 4t14 -4t14 4t8 -16");
    svg.path("drw-pencil", "M128 150q4 -12 8 0M164 146q4 10 7 0M186 152q4 -8 6 -2");
    svg.text("middle", 160, 208, "every scratch of the last grit must be gone");
  }

  /** Wood with deep scratches, with fine ones between the deep, or with fine ones alone. */
  private static String scratched(double x, int stage) {
    double face = stage == 2 ? 58 : 46 + stage * 4;
    StringBuilder d = new StringBuilder("M").append(Svg.pair(x, face));
    for (int i = 0; i < 14; i++) {
      boolean deep = stage == 0 || (stage == 1 && i % 4 == 1);
      double down = stage == 0 ? 9 + i % 3 * 2 : deep ? 8 : 2.5;
      d.append("h2.6l2 ").append(Num.of(down)).append("l2 ").append(Num.of(-down));
    }
    return d
        + "L"
        + Svg.pair(x + 92, face)
        + "L"
        + Svg.pair(x + 92, 92)
        + "L"
        + Svg.pair(x, 92)
        + "Z";
  }

  private static void profile(Svg svg) {
    svg.path(
        "drw-stock", "M12 150V72H34A36 36 0 0 0 70 108H112A26 26 0 0 1 164 108H176V124H190V150Z");
    Hatch.level(svg, 18, 184, 130, 148);
    svg.circle("drw-cloth", 70, 71, 36);
    svg.circle("drw-wood", 70, 71, 32);
    svg.circle("drw-hatch", 70, 71, 20);
    svg.circle("drw-hatch", 70, 71, 9);
    svg.path("drw-wood", "M104 44H172V104H168A30 30 0 0 0 108 104H104Z");
    svg.path("drw-cloth", "M104 104H108A30 30 0 0 1 168 104H172V107H165A27 27 0 0 0 111 107H104Z");
    svg.text("middle", 62, 24, "dowel in the hollow");
    svg.text("start", 108, 38, "hollow on the bead");
    svg.path("drw-stock", "M226 150V106Q228 94 244 92H300V150Z");
    svg.line("drw-removed", 226, 92, 244, 92);
    svg.line("drw-removed", 226, 92, 226, 106);
    Hatch.level(svg, 232, 296, 110, 148);
    svg.path("drw-cloth", "M214 112Q214 84 240 82L268 80L269 84L242 86Q219 89 218 112Z");
    svg.path("drw-top", "M204 118Q200 76 236 70L300 58L302 74L252 80Q212 84 214 118Z");
    svg.path(
        "drw-ring",
        "M204 118Q200 76 236 70L300 58M302 74L252 80Q212 84 214 118M204 118Q209 123 214 118");
    Crossed.out(svg, 224, 60, 60, 60);
    svg.text("middle", 100, 168, "one block for each shape");
    svg.text("middle", 262, 168, "fingers round it off");
    svg.text("middle", 160, 190, "always along the length, few strokes, then look");
  }

  private static void rubbing(Svg svg) {
    Hatch.block(svg, 16, 16, 288, 116);
    svg.rect("drw-film", 16, 16, 288, 116);
    svg.line("drw-removed", 16, 30, 304, 30);
    svg.line("drw-removed", 16, 118, 304, 118);
    for (double y : new double[] {42, 58, 74}) {
      Arrows.movement(svg, new Point(26, y), new Point(294, y));
    }
    svg.rect("drw-cloth", 128, 74, 54, 32);
    svg.rect("drw-wood", 131, 77, 48, 26);
    svg.line("drw-move", 26, 90, 126, 90);
    Arrows.movement(svg, new Point(186, 90), new Point(294, 90));
    svg.text("middle", 155, 94, "half over");
    svg.text("middle", 160, 150, "end to end with the grain, half over the last");
    svg.text("middle", 160, 164, "no circles; go lightly on edges: they wear through");
    svg.text("end", 298, 27, "edges last");
  }

  private static void quarterTurns(Svg svg) {
    String[] names = {"first grit", "quarter turn", "turn back", "polish"};
    for (int i = 0; i < names.length; i++) {
      double x = 6 + i * 79;
      svg.rect("drw-film", x, 30, 70, 70);
      if (i < 3) {
        lines(svg, x, i == 1, 10 - i * 3);
      }
      svg.text("middle", x + 35, 118, names[i]);
    }
    svg.path("drw-film-line", "M92 46h42M88 78h36");
    svg.path("drw-shine", "M246 84L297 30h14L246 98Z");
    svg.path("drw-shine", "M262 100L313 48v12L274 100Z");
    Arrows.movement(svg, new Point(20, 18), new Point(64, 18));
    Arrows.movement(svg, new Point(121, 26), new Point(121, 6));
    Arrows.movement(svg, new Point(178, 18), new Point(222, 18));
    svg.text("middle", 160, 142, "go on until no line of the last grit is left:");
    svg.text("middle", 160, 156, "across, they are easy to see");
  }

  private static void lines(Svg svg, double x, boolean upright, double step) {
    for (double at = step / 2 + 1; at < 70; at += step) {
      if (upright) {
        svg.line("drw-film-line", x + at, 33, x + at, 97);
      } else {
        svg.line("drw-film-line", x + 3, 30 + at, x + 67, 30 + at);
      }
    }
  }
}
