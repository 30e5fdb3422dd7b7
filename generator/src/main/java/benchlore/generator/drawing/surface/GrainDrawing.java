package benchlore.generator.drawing.surface;

import benchlore.generator.drawing.svg.Dimensions;
import benchlore.generator.drawing.svg.Label;
import benchlore.generator.drawing.svg.Point;
import benchlore.generator.drawing.svg.Svg;
import benchlore.generator.drawing.svg.Trail;

/**
 * End and face of a board. Growth rings are slender cones round the pith: circles on the end, and
 * on the face the curves where those cones meet a plane, {@code x = sqrt((r + k y)^2 - h^2)}. A
 * flat-sawn board's taper {@code k} is drawn larger than life to show the arches.
 */
final class GrainDrawing {
  private static final double HEIGHT = 236;
  private static final double LEFT = 30;
  private static final double WIDE = 260;
  private static final double FACE_TOP = 14;
  private static final double FACE_HIGH = 120;
  private static final double END_TOP = 142;
  private static final double THICK = 44;
  private static final double RING = 9;
  private static final int ARCH_STEPS = 20;
  private static final int LINE_STEPS = 4;

  private GrainDrawing() {}

  static String draw(BoardCut cut, String title, String idPrefix) {
    String angles = cut.fromDegrees() + " to " + cut.toDegrees() + " degrees";
    String words =
        "A "
            + cut.word()
            + " board, its face above its end. On the end the growth rings meet the"
            + " face at "
            + angles
            + "; "
            + figure(cut);
    Svg svg = Svg.titled(Dimensions.PAGE_WIDTH, HEIGHT, new Label(idPrefix, title, words));
    svg.rect("drw-stock", LEFT, FACE_TOP, WIDE, FACE_HIGH);
    svg.clippedGroup(idPrefix + "-f", box(FACE_TOP, FACE_HIGH));
    face(svg, cut.pith(), cut == BoardCut.FLAT ? 0.45 : 0.03);
    svg.endGroup();
    svg.rect("drw-stock", LEFT, END_TOP, WIDE, THICK);
    svg.clippedGroup(idPrefix + "-e", box(END_TOP, THICK));
    end(svg, cut.pith());
    svg.endGroup();
    svg.text("middle", Dimensions.PAGE_WIDTH / 2, END_TOP + THICK + 18, "face above, end below");
    String sum = "rings meet the face at " + cut.fromDegrees() + "° to " + cut.toDegrees() + "°";
    svg.text("middle", Dimensions.PAGE_WIDTH / 2, END_TOP + THICK + 34, sum);
    return svg.end();
  }

  private static String figure(BoardCut cut) {
    return switch (cut) {
      case FLAT -> "the face shows arches.";
      case RIFT -> "the face shows straight lines.";
      case QUARTER -> "the face shows straight, close lines.";
    };
  }

  private static String box(double top, double high) {
    return new Trail(LEFT, top)
        .to(LEFT + WIDE, top)
        .to(LEFT + WIDE, top + high)
        .to(LEFT, top + high)
        .closed();
  }

  private static double centreX(Point pith) {
    return LEFT + WIDE / 2 + pith.x();
  }

  /** The pith's distance below the face. */
  private static double below(Point pith) {
    return THICK / 2 - pith.z();
  }

  private static double farthest(Point pith) {
    return Math.hypot(Math.abs(pith.x()) + WIDE / 2, below(pith)) + RING;
  }

  private static void end(Svg svg, Point pith) {
    double y = END_TOP + below(pith);
    for (double r = RING; r < farthest(pith); r += RING) {
      svg.circle("drw-ring", centreX(pith), y, r);
    }
  }

  private static void face(Svg svg, Point pith, double taper) {
    double span = FACE_HIGH * taper;
    for (double r = RING; r < farthest(pith) + span; r += RING) {
      ring(svg, pith, r, taper);
    }
  }

  /** One ring on the face, from where it comes up through the face down to the lower end. */
  private static void ring(Svg svg, Point pith, double r, double taper) {
    double h = below(pith);
    double start = Math.max(0, FACE_HIGH - (r - h) / taper);
    if (start >= FACE_HIGH) {
      return;
    }
    StringBuilder right = new StringBuilder();
    StringBuilder left = new StringBuilder();
    boolean arches = Math.abs(pith.x()) < WIDE / 2;
    int steps = arches ? ARCH_STEPS : LINE_STEPS;
    for (int i = 0; i <= steps; i++) {
      double share = (double) i / steps;
      double y = start + (FACE_HIGH - start) * share * share;
      double radius = r - taper * (FACE_HIGH - y);
      double x = Math.sqrt(Math.max(0, radius * radius - h * h));
      char pen = i == 0 ? 'M' : 'L';
      right.append(pen).append(Svg.pair(centreX(pith) + x, FACE_TOP + y));
      left.append(pen).append(Svg.pair(centreX(pith) - x, FACE_TOP + y));
    }
    svg.path("drw-ring", arches ? right.toString() + left : right.toString());
  }
}
