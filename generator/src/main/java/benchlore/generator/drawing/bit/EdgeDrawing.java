package benchlore.generator.drawing.bit;

import benchlore.generator.drawing.surface.FaceGrain;
import benchlore.generator.drawing.svg.Box;
import benchlore.generator.drawing.svg.Label;
import benchlore.generator.drawing.svg.Num;
import benchlore.generator.drawing.svg.Point;
import benchlore.generator.drawing.svg.Svg;
import java.util.ArrayList;
import java.util.List;

/** The end of a board with its edge worked, all at one scale; dashed what was taken away. */
final class EdgeDrawing {
  /** A usual board, 3/4 inch planed. */
  static final double BOARD_MM = 19;

  private static final double SCALE = 5;
  private static final double WIDE_MM = 34;
  private static final double PAGE_WIDE = 200;
  private static final double MARGIN = 12;
  private static final double SPARE_MM = 3;
  private static final int ARC_STEPS = 16;

  private EdgeDrawing() {}

  /** What a bit leaves, on a board thick enough for it. */
  static String cut(BitGeometry g, String title, String idPrefix) {
    Form form = Form.of(g);
    double thick = thickness(form);
    Form onBoard =
        form.floorMm() >= 0
            ? form
            : new Form(form.profile(), 0, form.edgeMm(), form.faceMm() - thick, form.faceMm());
    return draw(onBoard.contour(), form.edgeMm(), new Label(idPrefix, title, words(g, thick)));
  }

  private static double thickness(Form form) {
    return form.floorMm() >= 0
        ? form.faceMm() - form.floorMm()
        : Math.max(BOARD_MM, form.faceMm() + SPARE_MM);
  }

  private static String words(BitGeometry g, double thick) {
    return "The end of a board "
        + Num.of(thick)
        + " mm thick, its edge cut by a "
        + g.shape().word()
        + " bit, "
        + String.join(", ", Words.shape(g))
        + ".";
  }

  static String shape(EdgeShape shape, double sizeMm, String title, String idPrefix) {
    String words =
        "The end of a board "
            + Num.of(BOARD_MM)
            + " mm thick with a "
            + shape.word()
            + " edge; what is cut measures "
            + Num.of(sizeMm)
            + " mm.";
    return draw(contour(shape, sizeMm), 0, new Label(idPrefix, title, words));
  }

  /** From the lower face up to the upper one. */
  private static Outline contour(EdgeShape shape, double size) {
    double t = BOARD_MM;
    return switch (shape) {
      case SQUARE -> Pen.at(0, 0).lineTo(0, t).outline();
      case EASED ->
          Pen.at(size, 0)
              .hollowTo(0, size, new Point(size, size))
              .lineTo(0, t - size)
              .hollowTo(size, t, new Point(size, t - size))
              .outline();
      case CHAMFER -> Pen.at(0, 0).lineTo(0, t - size).lineTo(size, t).outline();
      case HALF_ROUND ->
          Pen.at(0, 0).lineTo(0, t - size).hollowTo(size, t, new Point(size, t - size)).outline();
      case BEVEL -> Pen.at(0, 0).lineTo(size, t).outline();
      case UNDER_BEVEL -> Pen.at(size, 0).lineTo(0, t * 2 / 3).lineTo(0, t).outline();
    };
  }

  private static String draw(Outline contour, double edge, Label label) {
    double low = contour.from().z();
    double face = contour.to().z();
    double far = edge + WIDE_MM;
    double high = (face - low) * SCALE;
    Frame frame = new Frame(SCALE, MARGIN - SCALE * edge, MARGIN + SCALE * face);
    Svg svg = Svg.titled(PAGE_WIDE, high + 2 * MARGIN, label);
    Outline stock = contour.thenLineTo(far, face).thenLineTo(far, low).closed();
    svg.path("drw-stock", frame.closedPath(stock));
    svg.path("drw-hatch", FaceGrain.rings(corners(stock, frame)));
    Outline square = Outline.rectangle(edge, low, far, face);
    svg.path("drw-removed", removed(contour, frame, square));
    svg.path("drw-edge", frame.path(contour));
    return svg.end();
  }

  /** The square corners that are gone. */
  private static String removed(Outline contour, Frame frame, Outline square) {
    Box box = square.box();
    Outline corners =
        Pen.at(contour.from().x(), contour.from().z())
            .lineTo(box.x0(), box.z0())
            .lineTo(box.x0(), box.z1())
            .lineTo(contour.to().x(), contour.to().z())
            .outline();
    return frame.path(corners);
  }

  private static List<Point> corners(Outline outline, Frame frame) {
    List<Point> corners = new ArrayList<>();
    for (Segment segment : outline.segments()) {
      int steps = segment instanceof Arc ? ARC_STEPS : 1;
      for (int i = 0; i < steps; i++) {
        corners.add(frame.page(segment.at((double) i / steps)));
      }
    }
    return corners;
  }
}
