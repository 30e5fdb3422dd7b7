package benchlore.generator.drawing;

import java.util.List;

/** Sketches of mending a film and a board. */
final class MendSketches {
  static final List<ShopSketch> ALL =
      List.of(
          new ShopSketch(
              "run-pared",
              132,
              MendSketches::run,
              "Three sections of a film on wood: a run left till it is hard; tape on each "
                  + "side of it and a slightly bent blade paring it down; the film sanded flat "
                  + "under a hard block."),
          new ShopSketch(
              "crack-filled",
              176,
              MendSketches::crack,
              "A section of a board cracked right through. Tape pressed on the back dams "
                  + "it; epoxy wets the walls, fills the crack and stands a little proud."));

  private MendSketches() {}

  private static void run(Svg svg) {
    String[] names = {"wait till hard", "pare it down", "sand it flat"};
    String[] more = {"right through", "tape each side", "hard block"};
    String[] humps = {"q6 -28 20 -28t20 28", "q2 -8 8 -10h24q6 2 8 10", "h40"};
    for (int i = 0; i < names.length; i++) {
      double x = 8 + i * 106;
      Hatch.block(svg, x, 62, 92, 30);
      svg.path("drw-film", "M" + Svg.pair(x, 62) + "v-10h26" + humps[i] + "h26v10Z");
      svg.text("middle", x + 46, 110, names[i]);
      svg.text("middle", x + 46, 124, more[i]);
    }
    svg.rect("drw-template", 114, 48, 24, 4);
    svg.rect("drw-template", 182, 48, 24, 4);
    svg.path("drw-metal", "M128 41Q160 46 192 41L192 36Q160 41 128 36Z");
    Arrows.movement(svg, new Point(142, 24), new Point(180, 24));
    svg.rect("drw-wood", 246, 22, 40, 26);
    svg.rect("drw-cloth", 246, 48, 40, 4);
  }

  private static void crack(Svg svg) {
    svg.path("drw-stock", "M20 50L140 50L146 78L142 92L152 120L20 120Z");
    svg.path("drw-stock", "M182 50L300 50L300 120L166 120L172 96L168 82Z");
    Hatch.level(svg, 26, 134, 60, 118);
    Hatch.level(svg, 188, 294, 60, 118);
    svg.path(
        "drw-glue",
        "M134 50Q160 34 188 50L182 50L168 82L172 96L166 120L152 120L142 92L146 78L140 50Z");
    svg.rect("drw-template", 104, 120, 112, 6);
    Arrows.pointer(svg, new Point(104, 28), new Point(148, 42));
    Arrows.pointer(svg, new Point(232, 28), new Point(176, 66));
    Arrows.movement(svg, new Point(120, 148), new Point(120, 128));
    Arrows.movement(svg, new Point(200, 148), new Point(200, 128));
    svg.text("end", 102, 24, "a little proud");
    svg.text("start", 222, 24, "walls wetted");
    svg.text("middle", 160, 144, "tape dam");
    svg.text("middle", 160, 168, "dam the back, fill slowly, scrape while leathery");
  }
}
