package benchlore.generator.drawing;

import java.util.List;

/** Sketches of parts held together, or to a pattern. */
final class FitSketches {
  static final List<ShopSketch> ALL =
      List.of(
          new ShopSketch(
              "pattern-routing",
              192,
              FitSketches::template,
              "A section: a template taped on the work. The bearing of the bit runs on the "
                  + "template, and the cutter below, as wide, takes the work flush with it."),
          new ShopSketch(
              "taped-mitres",
              204,
              FitSketches::tape,
              "Above, four mitred sides lie in a row with their outsides on stretched tape. "
                  + "Below, rolled up into a box with its mitres shut and its diagonals compared."),
          new ShopSketch(
              "shaped-cauls",
              216,
              FitSketches::caul,
              "A curved glue-up between two offcuts with a soft lining. Their outer faces "
                  + "are flat and parallel, so that clamps press straight through the joint."),
          new ShopSketch(
              "tape-and-glue",
              162,
              FitSketches::tapeAndGlue,
              "A section, pulled apart: the part with tape on its underside, drops of glue, "
                  + "tape, and the board below. The glue lies between the tapes only."),
          new ShopSketch(
              "bent-strips",
              198,
              FitSketches::bend,
              "Four thin strips pressed over a curved form. A dashed line shows the flatter "
                  + "curve that they spring back to."));

  private FitSketches() {}

  private static void template(Svg svg) {
    svg.rect("drw-template", 8, 146, 304, 14);
    svg.rect("drw-stock", 20, 88, 146, 44);
    Hatch.level(svg, 26, 144, 96, 130);
    svg.rect("drw-cloth", 20, 82, 120, 6);
    svg.rect("drw-template", 20, 62, 130, 20);
    svg.rect("drw-wood", 20, 132, 110, 14);
    svg.rect("drw-metal", 168, 8, 14, 46);
    svg.rect("drw-bearing", 150, 60, 50, 20);
    svg.rect("drw-metal", 166, 54, 18, 6);
    svg.rect("drw-metal", 150, 84, 50, 54);
    svg.line("drw-edge", 150, 84, 150, 138);
    svg.rect("drw-removed", 150, 88, 16, 44);
    Arrows.pointer(svg, new Point(112, 44), new Point(149, 68));
    Arrows.pointer(svg, new Point(216, 112), new Point(168, 112));
    svg.text("end", 112, 36, "bearing rides");
    svg.text("end", 112, 50, "the template");
    svg.text("start", 32, 77, "template");
    svg.text("start", 60, 115, "work");
    svg.text("start", 218, 68, "cutter as wide");
    svg.text("start", 218, 82, "as the bearing");
    svg.text("start", 218, 116, "sawn proud");
    svg.text("middle", 160, 182, "tape between, packing clear of the bit");
  }

  private static void tape(Svg svg) {
    double y = 54;
    double[] wide = {84, 60, 84, 60};
    double x = 12;
    for (double w : wide) {
      svg.path(
          "drw-stock",
          new Trail(x, y).to(x + w, y).to(x + w - 16, y - 16).to(x + 16, y - 16).closed());
      x += w + 1;
    }
    svg.rect("drw-template", 6, y, 308, 5);
    svg.path("drw-move", "M20 34q10 -22 42 -20");
    Arrows.big(svg, new Point(50, 13), new Point(66, 14.5));
    svg.text("start", 76, 20, "roll it up, outside on the tape");
    svg.rect("drw-template", 101, 87, 118, 88);
    svg.rect("drw-stock", 106, 92, 108, 78);
    svg.rect("drw-cut", 122, 108, 76, 46);
    for (double[] c :
        new double[][] {
          {106, 92, 16, 16}, {214, 92, -16, 16}, {106, 170, 16, -16}, {214, 170, -16, -16}
        }) {
      svg.line("drw-ring", c[0], c[1], c[0] + c[2], c[1] + c[3]);
    }
    svg.line("drw-axis", 122, 108, 198, 154);
    svg.line("drw-axis", 198, 108, 122, 154);
    Arrows.pointer(svg, new Point(80, 110), new Point(101, 100));
    Arrows.pointer(svg, new Point(242, 126), new Point(186, 118));
    svg.text("end", 84, 124, "stretched tape");
    svg.text("start", 240, 140, "diagonals");
    svg.text("start", 240, 154, "equal");
    svg.text("middle", 160, 194, "mitres shut tight, no glue yet");
  }

  private static void caul(Svg svg) {
    svg.path("drw-wood", "M40 30L280 30L280 92Q160 22 40 92Z");
    svg.path("drw-cloth", "M40 92Q160 22 280 92L280 98Q160 28 40 98Z");
    svg.path("drw-stock", "M40 98Q160 28 280 98L280 114Q160 44 40 114Z");
    svg.path("drw-edge", "M40 114Q160 44 280 114");
    svg.path("drw-stock", "M40 114Q160 44 280 114L280 130Q160 60 40 130Z");
    svg.path("drw-cloth", "M40 130Q160 60 280 130L280 136Q160 66 40 136Z");
    svg.path("drw-wood", "M40 136Q160 66 280 136L280 160L40 160Z");
    for (double x : new double[] {70, 160, 250}) {
      Arrows.movement(svg, new Point(x, 4), new Point(x, 29));
      Arrows.movement(svg, new Point(x, 186), new Point(x, 161));
    }
    svg.text("middle", 115, 18, "flat face");
    svg.text("middle", 205, 18, "flat face");
    svg.text("middle", 160, 46, "offcut");
    svg.text("middle", 160, 144, "offcut");
    svg.text("start", 286, 100, "lined");
    svg.text("middle", 160, 206, "close the middle first, then work outwards");
  }

  private static void tapeAndGlue(Svg svg) {
    Hatch.block(svg, 16, 16, 160, 40);
    svg.rect("drw-template", 16, 56, 160, 7);
    for (double x : new double[] {36, 78, 120}) {
      svg.path("drw-glue", "M" + Svg.pair(x, 96) + "q18 -16 36 0Z");
    }
    svg.rect("drw-template", 16, 96, 160, 7);
    svg.rect("drw-wood", 8, 103, 176, 26);
    Arrows.movement(svg, new Point(96, 66), new Point(96, 86));
    svg.text("start", 192, 40, "part");
    svg.text("start", 192, 64, "tape, rubbed hard");
    svg.text("start", 192, 84, "glue on tape only");
    svg.text("start", 192, 104, "tape, rubbed hard");
    svg.text("start", 192, 124, "board");
    svg.text("middle", 160, 152, "light sideways cuts; roll it off to release");
  }

  private static void bend(Svg svg) {
    svg.path("drw-wood", "M40 166L40 130Q160 10 280 130L280 166Z");
    for (int i = 0; i < 4; i++) {
      double y = 130 - i * 8;
      svg.path("drw-stock", arch(y));
    }
    svg.path("drw-removed", "M24 84Q160 -8 296 84");
    Arrows.movement(svg, new Point(160, 8), new Point(160, 36));
    Arrows.movement(svg, new Point(84, 30), new Point(98, 53));
    Arrows.movement(svg, new Point(236, 30), new Point(222, 53));
    Arrows.pointer(svg, new Point(30, 22), new Point(40, 74));
    Arrows.pointer(svg, new Point(290, 22), new Point(264, 90));
    svg.text("start", 4, 16, "springs back");
    svg.text("end", 316, 16, "thin strips");
    svg.text("middle", 160, 136, "form");
    svg.text("middle", 160, 188, "a form tighter than the curve you want");
  }

  /** One strip laid over the form. */
  private static String arch(double y) {
    return "M" + Svg.pair(40, y) + "q120 -120 240 0v-8q-120 -120 -240 0Z";
  }
}
