package benchlore.generator.drawing;

/**
 * A small plan of how the work meets the bit: always fed against the rotation.
 *
 * <p>Common practice: a hand router's bit turns clockwise seen from above, so with the edge facing
 * you it is moved from left to right; a table turns the router over, so the work goes from right to
 * left past the near side of the bit.
 */
final class PlanView {
  private static final double LEFT = 14;
  private static final double RIGHT = 306;
  private static final double BIT_X = 150;
  private static final double BIT_R = 19;
  private static final double DEEP = 7;

  private PlanView() {}

  /** How the work is held and fed. */
  enum Kind {
    EDGE_BY_HAND(
        "from above, edge towards you",
        "By hand, with the edge towards you: seen from"
            + " above the bit turns clockwise and the router moves from left to right."),
    GROOVE_BY_HAND(
        "from above, guide on the far side",
        "By hand: seen from above the bit turns"
            + " clockwise and the router moves from left to right, held against a guide on the far"
            + " side."),
    TABLE(
        "router table, from above",
        "In a router table: seen from above the bit turns"
            + " anticlockwise and the work moves from right to left along the fence."),
    RASTER(
        "from above, passes overlap",
        "Seen from above the bit turns clockwise and goes to and"
            + " fro over the face in passes that overlap.");

    /** From this size a bit is for the table only; common practice. */
    private static final double TABLE_FROM_MM = 50;

    private final String caption;
    private final String words;

    Kind(String caption, String words) {
      this.caption = caption;
      this.words = words;
    }

    String words() {
      return words;
    }

    static Kind of(BitGeometry g) {
      return switch (g.shape()) {
        case SURFACING -> RASTER;
        case PANEL_BEVEL, PANEL_COVE, LOCK_MITRE, FINGER_JOINT, TONGUE_AND_GROOVE -> TABLE;
        default -> {
          boolean groove = g.shape().cut() == CutKind.GROOVE;
          boolean wide = g.diameterMm() >= TABLE_FROM_MM;
          yield groove ? GROOVE_BY_HAND : wide ? TABLE : EDGE_BY_HAND;
        }
      };
    }
  }

  static void draw(Svg svg, double top, Kind kind) {
    switch (kind) {
      case EDGE_BY_HAND -> edge(svg, top);
      case GROOVE_BY_HAND -> groove(svg, top);
      case TABLE -> table(svg, top);
      case RASTER -> raster(svg, top);
    }
    svg.text("middle", Dimensions.PAGE_WIDTH / 2, top + 103, kind.caption);
  }

  private static void edge(Svg svg, double top) {
    double edge = top + 44;
    svg.path(
        "drw-stock",
        "M"
            + Svg.pair(LEFT, top)
            + "L"
            + Svg.pair(RIGHT, top)
            + "L"
            + Svg.pair(RIGHT, edge)
            + "L"
            + Svg.pair(BIT_X, edge)
            + "L"
            + Svg.pair(BIT_X, edge - DEEP)
            + "L"
            + Svg.pair(LEFT, edge - DEEP)
            + "Z");
    grain(svg, top + 7, edge - DEEP);
    svg.line("drw-removed", LEFT, edge, BIT_X, edge);
    double centre = edge - DEEP + BIT_R;
    svg.circle("drw-metal", BIT_X, centre, BIT_R);
    svg.circle("drw-bearing", BIT_X, centre, BIT_R - DEEP);
    turn(svg, centre, true, false);
    feed(svg, centre + 4, true, "router");
  }

  private static void groove(Svg svg, double top) {
    svg.rect("drw-template", LEFT, top, RIGHT - LEFT, 9);
    svg.rect("drw-stock", LEFT, top + 9, RIGHT - LEFT, 76);
    double centre = top + 42;
    grain(svg, top + 15, top + 24);
    grain(svg, top + 70, top + 84);
    svg.path(
        "drw-cut",
        "M"
            + Svg.pair(LEFT, centre - 12)
            + "L"
            + Svg.pair(BIT_X, centre - 12)
            + "L"
            + Svg.pair(BIT_X, centre + 12)
            + "L"
            + Svg.pair(LEFT, centre + 12)
            + "Z");
    svg.circle("drw-metal", BIT_X, centre, 12);
    turn(svg, centre, true, false);
    feed(svg, centre + 4, true, "router");
  }

  private static void table(Svg svg, double top) {
    double fence = top + 26;
    svg.rect("drw-template", LEFT, top + 8, BIT_X - BIT_R - 5 - LEFT, fence - top - 8);
    double right = BIT_X + BIT_R + 5;
    svg.rect("drw-template", right, top + 8, RIGHT - right, fence - top - 8);
    svg.path(
        "drw-stock",
        "M"
            + Svg.pair(LEFT + 20, fence + DEEP)
            + "L"
            + Svg.pair(BIT_X, fence + DEEP)
            + "L"
            + Svg.pair(BIT_X, fence)
            + "L"
            + Svg.pair(RIGHT, fence)
            + "L"
            + Svg.pair(RIGHT, top + 84)
            + "L"
            + Svg.pair(LEFT + 20, top + 84)
            + "Z");
    double centre = fence + DEEP - BIT_R;
    svg.circle("drw-metal", BIT_X, centre, BIT_R);
    turn(svg, centre, false, true);
    feed(svg, top + 62, false, "work");
  }

  private static void raster(Svg svg, double top) {
    svg.rect("drw-stock", LEFT, top, RIGHT - LEFT, 86);
    double centre = top + 60;
    svg.path(
        "drw-removed",
        "M"
            + Svg.pair(LEFT + 30, top + 20)
            + "L"
            + Svg.pair(RIGHT - 50, top + 20)
            + "L"
            + Svg.pair(RIGHT - 50, top + 40)
            + "L"
            + Svg.pair(LEFT + 30, top + 40)
            + "L"
            + Svg.pair(LEFT + 30, centre)
            + "L"
            + Svg.pair(BIT_X, centre));
    svg.circle("drw-metal", BIT_X, centre, BIT_R - 4);
    turn(svg, centre, true, false);
    feed(svg, centre + 4, true, "router");
  }

  private static void grain(Svg svg, double from, double to) {
    for (double y = from; y < to; y += 8) {
      svg.line("drw-hatch", LEFT + 4, y, RIGHT - 4, y);
    }
  }

  /** The curved arrow of rotation, below the bit or above it, where the work does not hide it. */
  private static void turn(Svg svg, double centre, boolean clockwise, boolean above) {
    double r = BIT_R + 6;
    double start = Math.toRadians(25);
    double end = Math.toRadians(140);
    double side = above ? -1 : 1;
    Point from = new Point(BIT_X + r * Math.cos(start), centre + side * r * Math.sin(start));
    Point to = new Point(BIT_X + r * Math.cos(end), centre + side * r * Math.sin(end));
    boolean sweep = clockwise;
    svg.path(
        "drw-move",
        "M"
            + Svg.pair(from.x(), from.z())
            + "A"
            + Num.of(r)
            + " "
            + Num.of(r)
            + " 0 0 "
            + (sweep ? "1 " : "0 ")
            + Svg.pair(to.x(), to.z()));
    double back = Math.toRadians(125);
    Point before = new Point(BIT_X + r * Math.cos(back), centre + side * r * Math.sin(back));
    Arrows.big(svg, before, to);
  }

  private static void feed(Svg svg, double y, boolean rightwards, String what) {
    Point a = new Point(BIT_X + 44, y);
    Point b = new Point(BIT_X + 110, y);
    Arrows.movement(svg, rightwards ? a : b, rightwards ? b : a);
    svg.text("middle", BIT_X + 77, y + 16, "feed the " + what);
  }
}
