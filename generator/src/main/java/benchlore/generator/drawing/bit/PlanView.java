package benchlore.generator.drawing.bit;

import benchlore.generator.drawing.svg.Arrows;
import benchlore.generator.drawing.svg.Dimensions;
import benchlore.generator.drawing.svg.Num;
import benchlore.generator.drawing.svg.Point;
import benchlore.generator.drawing.svg.Svg;
import benchlore.generator.drawing.svg.Trail;

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

  static void draw(Svg svg, double top, BitGeometry g) {
    Kind kind = Kind.of(g);
    switch (kind) {
      case EDGE_BY_HAND -> edge(svg, top, g.hasBearing());
      case GROOVE_BY_HAND -> groove(svg, top, Channel.of(g.shape()));
      case TABLE -> table(svg, top);
      case RASTER -> raster(svg, top);
    }
    svg.text("middle", Dimensions.PAGE_WIDTH / 2, top + 103, kind.caption);
  }

  private static void edge(Svg svg, double top, boolean bearing) {
    double edge = top + 44;
    svg.path(
        "drw-stock",
        new Trail(LEFT, top)
            .to(RIGHT, top)
            .to(RIGHT, edge)
            .to(BIT_X, edge)
            .to(BIT_X, edge - DEEP)
            .to(LEFT, edge - DEEP)
            .closed());
    grain(svg, top + 7, edge - DEEP);
    svg.line("drw-removed", LEFT, edge, BIT_X, edge);
    double centre = edge - DEEP + BIT_R;
    svg.circle("drw-metal", BIT_X, centre, BIT_R);
    if (bearing) {
      svg.circle("drw-bearing", BIT_X, centre, BIT_R - DEEP);
    }
    turn(svg, centre, false);
    feed(svg, centre + 4, true);
  }

  /** A groove from above: half its width at the mouth and at its widest, and where it starts. */
  private record Channel(double mouth, double widest, double start, boolean hole) {
    static Channel of(BitShape shape) {
      return switch (shape) {
        case KEYHOLE -> new Channel(6, 12, LEFT + 40, true);
        case T_SLOT -> new Channel(6, 12, LEFT, false);
        case DOVETAIL -> new Channel(9, 12, LEFT, false);
        default -> new Channel(12, 12, LEFT, false);
      };
    }
  }

  private static void groove(Svg svg, double top, Channel channel) {
    svg.rect("drw-template", LEFT, top, RIGHT - LEFT, 9);
    svg.rect("drw-stock", LEFT, top + 9, RIGHT - LEFT, 77);
    double centre = top + 42;
    grain(svg, top + 15, top + 24);
    grain(svg, top + 74, top + 84);
    double wide = channel.widest();
    double mouth = channel.mouth();
    String slot =
        channel.hole()
            ? keyhole(channel, centre)
            : new Trail(BIT_X, centre + mouth)
                .to(channel.start(), centre + mouth)
                .to(channel.start(), centre - mouth)
                .to(BIT_X, centre - mouth)
                .closed();
    svg.path("drw-cut", slot);
    if (wide > mouth) {
      double from = channel.start();
      svg.line("drw-removed", from, centre - wide, BIT_X, centre - wide);
      svg.line("drw-removed", from, centre + wide, BIT_X, centre + wide);
    }
    svg.circle("drw-metal", BIT_X, centre, wide);
    turn(svg, centre, false);
    feed(svg, centre + 4, true);
  }

  /** The hole a head is plunged through, with the narrow slot that leads away from it. */
  private static String keyhole(Channel channel, double centre) {
    double r = channel.widest();
    double mouth = channel.mouth();
    double throat = channel.start() + Math.sqrt(r * r - mouth * mouth);
    String round = "A" + Num.of(r) + " " + Num.of(r) + " 0 1 1 ";
    return new Trail(BIT_X, centre + mouth).to(throat, centre + mouth).open()
        + round
        + Svg.pair(throat, centre - mouth)
        + "L"
        + Svg.pair(BIT_X, centre - mouth)
        + "Z";
  }

  private static void table(Svg svg, double top) {
    double fence = top + 26;
    double gap = BIT_R + 5;
    svg.rect("drw-template", LEFT, top + 8, BIT_X - gap - LEFT, fence - top - 8);
    svg.rect("drw-template", BIT_X + gap, top + 8, RIGHT - BIT_X - gap, fence - top - 8);
    svg.path(
        "drw-stock",
        new Trail(LEFT + 20, fence + DEEP)
            .to(BIT_X, fence + DEEP)
            .to(BIT_X, fence)
            .to(RIGHT, fence)
            .to(RIGHT, top + 86)
            .to(LEFT + 20, top + 86)
            .closed());
    double centre = fence + DEEP - BIT_R;
    svg.circle("drw-metal", BIT_X, centre, BIT_R);
    turn(svg, centre, true);
    feed(svg, top + 58, false);
  }

  private static void raster(Svg svg, double top) {
    svg.rect("drw-stock", LEFT, top, RIGHT - LEFT, 86);
    double centre = top + 54;
    svg.path(
        "drw-removed",
        new Trail(LEFT + 30, top + 14)
            .to(RIGHT - 50, top + 14)
            .to(RIGHT - 50, top + 34)
            .to(LEFT + 30, top + 34)
            .to(LEFT + 30, centre)
            .to(BIT_X, centre)
            .open());
    svg.circle("drw-metal", BIT_X, centre, BIT_R - 5);
    turn(svg, centre, false);
    feed(svg, centre + 4, true);
  }

  private static void grain(Svg svg, double from, double to) {
    for (double y = from; y < to; y += 8) {
      svg.line("drw-hatch", LEFT + 4, y, RIGHT - 4, y);
    }
  }

  /**
   * The curved arrow of rotation: clockwise below a bit seen from its shank, anticlockwise above
   * one that stands in a table, where the work does not hide it.
   */
  private static void turn(Svg svg, double centre, boolean inTable) {
    double r = BIT_R + 6;
    double side = inTable ? -1 : 1;
    Point from = onCircle(centre, r, side * Math.toRadians(25));
    Point to = onCircle(centre, r, side * Math.toRadians(140));
    String arc = "A" + Num.of(r) + " " + Num.of(r) + " 0 0 " + (inTable ? "0 " : "1 ");
    svg.path("drw-move", "M" + Svg.pair(from.x(), from.z()) + arc + Svg.pair(to.x(), to.z()));
    Arrows.big(svg, onCircle(centre, r, side * Math.toRadians(125)), to);
  }

  private static Point onCircle(double centre, double radius, double angle) {
    return new Point(BIT_X + radius * Math.cos(angle), centre + radius * Math.sin(angle));
  }

  /** A hand router is fed to the right, the work on a table to the left. */
  private static void feed(Svg svg, double y, boolean byHand) {
    Point left = new Point(BIT_X + 44, y);
    Point right = new Point(BIT_X + 110, y);
    Arrows.movement(svg, byHand ? left : right, byHand ? right : left);
    svg.text("middle", BIT_X + 77, y + 16, byHand ? "feed the router" : "feed the work");
  }
}
