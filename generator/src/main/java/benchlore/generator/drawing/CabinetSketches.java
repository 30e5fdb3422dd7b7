package benchlore.generator.drawing;

import java.util.List;

/** Sketches of fitting doors, inserts, inlays and veneer. */
final class CabinetSketches {
  static final List<ShopSketch> ALL =
      List.of(
          new ShopSketch(
              "insert-turned-in",
              182,
              CabinetSketches::insert,
              "Two sections of a board: a threaded insert on a bolt with a nut locked "
                  + "against it, turned into a countersunk hole; the insert in place, its top a "
                  + "little below the face."),
          new ShopSketch(
              "inlay-let-in",
              180,
              CabinetSketches::inlay,
              "Three sections: a knife scribes round a piece whose edges slope in; the "
                  + "piece goes down into a shallow recess; seated, its top is planed flush."),
          new ShopSketch(
              "veneer-press",
              246,
              CabinetSketches::veneer,
              "Layers of a press drawn apart: flat board, newspaper, plastic, veneer and "
                  + "glue above the core, and the same again below it; arrows press both boards."),
          new ShopSketch(
              "even-gap",
              210,
              CabinetSketches::gap,
              "On the left a door in its frame with shims in the gap all round and hinges "
                  + "at the left. On the right its closing edge from above, sloping away to the "
                  + "back."));

  private CabinetSketches() {}

  private static void insert(Svg svg) {
    svg.path("drw-stock", "M12 88H58L64 94V142H96V94L102 88H148V156H12Z");
    svg.path("drw-stock", "M172 88H218L224 94V142H256V94L262 88H308V156H172Z");
    Hatch.level(svg, 18, 56, 98, 154);
    Hatch.level(svg, 104, 142, 98, 154);
    Hatch.level(svg, 178, 216, 98, 154);
    Hatch.level(svg, 264, 302, 98, 154);
    svg.rect("drw-metal", 74, 18, 12, 60);
    svg.rect("drw-metal", 66, 8, 28, 11);
    svg.rect("drw-iron", 65, 30, 30, 11);
    brass(svg, 62, 41);
    svg.path("drw-move", "M104 20Q80 36 60 24");
    Arrows.big(svg, new Point(66, 28), new Point(53, 19));
    Arrows.movement(svg, new Point(112, 40), new Point(112, 78));
    brass(svg, 222, 92);
    svg.rect("drw-cut", 234, 92, 12, 40);
    Arrows.pointer(svg, new Point(288, 64), new Point(254, 90));
    svg.text("middle", 272, 58, "a hair below");
    svg.text("start", 112, 16, "bolt, and a nut");
    svg.text("start", 112, 29, "locked against it");
    svg.text("middle", 80, 174, "turn it in square");
    svg.text("middle", 240, 174, "wood meets wood");
  }

  /** A threaded insert 36 wide, its top at a height. */
  private static void brass(Svg svg, double x, double y) {
    StringBuilder d = new StringBuilder("M").append(Svg.pair(x + 2, y)).append("h32");
    d.append("l3 4l-3 4".repeat(5)).append("h-32").append("l-3 -4l3 -4".repeat(5));
    svg.path("drw-brass", d + "Z");
  }

  private static void inlay(Svg svg) {
    String[] names = {"cut round the piece", "drop it in", "plane it flush"};
    for (int i = 0; i < names.length; i++) {
      double x = 8 + i * 106;
      String face = i == 0 ? "h92" : "h18l3 16h50l3 -16h18";
      svg.path("drw-stock", "M" + Svg.pair(x, 74) + face + "v44h-92Z");
      Hatch.level(svg, x + 5, x + 87, 98, 116);
    }
    svg.text("middle", 59, 136, names[0]);
    svg.text("middle", 160, 136, names[1]);
    svg.text("middle", 266, 136, names[2]);
    svg.path("drw-wood", "M26 54H82L79 74H29Z");
    svg.path("drw-metal", new Trail(84, 76).to(86, 46).to(94, 46).to(94, 62).closed());
    svg.rect("drw-dark", 86, 16, 8, 30);
    svg.path("drw-wood", "M132 22H188L185 42H135Z");
    Arrows.movement(svg, new Point(160, 48), new Point(160, 80));
    svg.path("drw-glue", "M238 74L241 90H291L294 74Z");
    svg.path("drw-wood", "M238 74L241 88H291L294 74Z");
    svg.path("drw-removed", "M238 74L237 68H295L294 74");
    svg.rect("drw-metal", 246, 52, 54, 10);
    svg.path("drw-wood", "M250 52q4 -10 -2 -20h9q5 9 5 20Z");
    svg.circle("drw-wood", 291, 47, 5);
    Arrows.movement(svg, new Point(262, 20), new Point(302, 20));
    svg.text("middle", 160, 158, "the piece comes first, its edges sloping in;");
    svg.text("middle", 160, 172, "the recess is a shaving too shallow");
  }

  private static void veneer(Svg svg) {
    for (boolean below : new boolean[] {false, true}) {
      layer(svg, "drw-wood", 24, 24, below);
      layer(svg, "drw-cloth", 55, 6, below);
      layer(svg, "drw-glass", 68, 3, below);
      layer(svg, "drw-top", 78, 6, below);
      layer(svg, "drw-glue", 91, 3, below);
      svg.path("drw-ring", "M20 " + Num.of(below ? 141 : 81) + "H180");
    }
    svg.rect("drw-stock", 16, 98, 168, 26);
    Hatch.level(svg, 22, 178, 106, 122);
    for (double x : new double[] {56, 144}) {
      Arrows.movement(svg, new Point(x, 2), new Point(x, 22));
      Arrows.movement(svg, new Point(x, 220), new Point(x, 200));
    }
    svg.text("start", 194, 40, "flat board");
    svg.text("start", 194, 61, "newspaper");
    svg.text("start", 194, 74, "plastic sheet");
    svg.text("start", 194, 87, "veneer");
    svg.text("start", 194, 115, "core, glue on both");
    svg.text("start", 194, 151, "and the same below");
    svg.text("middle", 160, 238, "both faces at once, or the panel curls");
  }

  /** One layer of the press, counted from the top or mirrored to the bottom. */
  private static void layer(Svg svg, String look, double y, double high, boolean below) {
    svg.rect(look, 16, below ? 222 - y - high : y, 168, high);
  }

  private static void gap(Svg svg) {
    svg.rect("drw-stock", 16, 10, 172, 172);
    svg.rect("drw-cut", 36, 30, 132, 132);
    svg.rect("drw-wood", 41, 35, 122, 122);
    svg.rect("drw-top", 61, 55, 82, 82);
    for (double x : new double[] {52, 136}) {
      svg.rect("drw-move", x, 31, 14, 3);
      svg.rect("drw-move", x, 158, 14, 3);
    }
    for (double y : new double[] {46, 132}) {
      svg.rect("drw-move", 164, y, 3, 14);
      svg.rect("drw-brass", 35, y, 7, 16);
    }
    svg.circle("drw-brass", 154, 96, 4);
    svg.text("start", 198, 22, "shims as thick");
    svg.text("start", 198, 35, "as the gap");
    Arrows.pointer(svg, new Point(196, 40), new Point(170, 52));
    svg.path("drw-wood", new Trail(204, 88).to(264, 88).to(258, 124).to(204, 124).closed());
    svg.rect("drw-stock", 269, 80, 40, 52);
    svg.line("drw-removed", 264, 88, 264, 124);
    svg.text("middle", 256, 70, "seen from above:");
    svg.text("middle", 231, 101, "front");
    svg.text("middle", 231, 119, "back");
    svg.text("middle", 256, 150, "closing edge slopes");
    svg.text("middle", 256, 163, "away to the back");
    svg.text("middle", 160, 202, "plane the door, not the frame, a shaving at a time");
  }
}
