package benchlore.generator.drawing;

import java.util.List;

/** Sketches of wood that must be free to move, and of wood let into wood. */
final class JoinerySketches {
  static final List<ShopSketch> ALL =
      List.of(
          new ShopSketch(
              "chip-let-in",
              168,
              JoinerySketches::chip,
              "Three sections: wood torn out; the hole pared to slanting ends with a "
                  + "fitting piece above it; the piece glued in and pared flush."),
          new ShopSketch(
              "breadboard-free",
              260,
              JoinerySketches::breadboard,
              "A breadboard end from above with its three tenons showing: the middle one "
                  + "glued, the outer ones free, their pins in slots across the width. Arrows "
                  + "show the top moving both ways."),
          new ShopSketch(
              "panel-loose",
              264,
              JoinerySketches::panel,
              "Above, a framed door: glue at the corners of the frame only, the panel "
                  + "pinned at the middle of its top and bottom. Below, a section across it: room "
                  + "beside the panel in both grooves."));

  private JoinerySketches() {}

  private static void chip(Svg svg) {
    String[] names = {"torn out", "pare it clean", "glue in, pare flush"};
    for (int i = 0; i < names.length; i++) {
      svg.text("middle", 54 + i * 106, 124, names[i]);
    }
    svg.path("drw-stock", "M8 58h20l6 9l5 -4l6 10l9 -3l7 6l10 -10l6 2l6 -10h17v48h-92Z");
    Hatch.level(svg, 13, 95, 84, 104);
    svg.path("drw-stock", "M114 58h16l14 16h32l14 -16h16v48h-92Z");
    Hatch.level(svg, 119, 201, 84, 104);
    svg.path("drw-wood", "M128 26h64l-14 18h-36Z");
    svg.path("drw-hatch", "M136 32h48M141 38h38");
    Arrows.movement(svg, new Point(160, 48), new Point(160, 70));
    svg.path("drw-stock", "M220 58h16l14 16h32l14 -16h16v48h-92Z");
    svg.path("drw-wood", "M236 58h60l-14 16h-32Z");
    svg.path("drw-hatch", "M246 63h40M250 69h32");
    svg.path("drw-glue", "M236 58l14 16h32l14 -16h-3l-12 13h-30l-12 -13Z");
    Hatch.level(svg, 225, 307, 84, 104);
    svg.path("drw-removed", "M236 58L230 50H302L296 58");
    svg.path("drw-metal", "M268 58L312 50L313 43L276 51Z");
    Arrows.movement(svg, new Point(306, 30), new Point(274, 34));
    svg.text("middle", 160, 146, "slanting ends, the same grain the same way;");
    svg.text("middle", 160, 160, "pare from both ends towards the middle");
  }

  private static void breadboard(Svg svg) {
    svg.rect("drw-stock", 16, 36, 150, 168);
    Hatch.level(svg, 22, 160, 44, 202);
    svg.rect("drw-stock", 170, 32, 54, 176);
    for (double x = 178; x < 224; x += 9) {
      svg.line("drw-hatch", x, 36, x, 204);
    }
    for (double y : new double[] {52, 104, 156}) {
      boolean middle = y == 104;
      svg.rect("drw-top", 166, y, 46, 32);
      svg.rect(middle ? "drw-glue" : "drw-removed", 166, y, 46, 32);
      if (!middle) {
        svg.path("drw-cut", "M190 " + Num.of(y + 10) + "a5 5 0 0 1 10 0v12a5 5 0 0 1 -10 0Z");
      }
      svg.circle("drw-wood", 195, y + 16, 4);
    }
    Arrows.movement(svg, new Point(88, 32), new Point(88, 8));
    Arrows.movement(svg, new Point(88, 208), new Point(88, 232));
    svg.text("start", 98, 20, "the top moves");
    svg.text("start", 98, 228, "both ways");
    Arrows.pointer(svg, new Point(236, 68), new Point(203, 68));
    Arrows.pointer(svg, new Point(236, 120), new Point(214, 120));
    Arrows.pointer(svg, new Point(236, 172), new Point(203, 172));
    svg.text("start", 240, 64, "pin in a slot,");
    svg.text("start", 240, 78, "no glue");
    svg.text("start", 240, 124, "glued");
    svg.text("start", 240, 168, "pin in a slot,");
    svg.text("start", 240, 182, "no glue");
    svg.text("middle", 160, 252, "seen from above, as if the end board were glass");
  }

  private static void panel(Svg svg) {
    svg.rect("drw-stock", 70, 12, 180, 132);
    svg.rect("drw-top", 100, 40, 120, 76);
    for (double x = 108; x < 220; x += 9) {
      svg.line("drw-hatch", x, 44, x, 112);
    }
    for (double x : new double[] {100, 220}) {
      svg.line("drw-ring", x, 12, x, 144);
    }
    for (double x : new double[] {80, 220}) {
      for (double y : new double[] {16, 120}) {
        svg.rect("drw-glue", x, y, 20, 20);
      }
    }
    svg.circle("drw-wood", 160, 28, 4);
    svg.circle("drw-wood", 160, 128, 4);
    Arrows.movement(svg, new Point(138, 78), new Point(106, 78));
    Arrows.movement(svg, new Point(182, 78), new Point(214, 78));
    svg.text("start", 258, 28, "glue at");
    svg.text("start", 258, 42, "corners");
    Arrows.pointer(svg, new Point(66, 72), new Point(155, 30));
    svg.text("end", 62, 70, "pin in");
    svg.text("end", 62, 84, "the middle");
    acrossTheDoor(svg);
  }

  private static void acrossTheDoor(Svg svg) {
    svg.path("drw-stock", "M14 168h60v16h-22v24h22v16h-60Z");
    svg.path("drw-stock", "M306 168h-60v16h22v24h-22v16h60Z");
    svg.rect("drw-top", 62, 186, 196, 20);
    svg.path("drw-film-line", "M62 186H258V206H62Z");
    Hatch.level(svg, 70, 250, 194, 204);
    Arrows.pointer(svg, new Point(110, 234), new Point(57, 200));
    Arrows.pointer(svg, new Point(210, 234), new Point(263, 200));
    svg.text("middle", 160, 236, "room to grow");
    svg.text("middle", 160, 256, "finish the panel, edges too, before it goes in");
  }
}
