package benchlore.generator.drawing.bit;

import benchlore.generator.drawing.svg.Box;
import benchlore.generator.drawing.svg.Measure;

/**
 * How wide and high a cut is, and what of it the bit decides.
 *
 * @param cut the outline of what is removed, without what only touches the edge
 */
record CutFigures(Outline cut, String widthName, Measure mouth, String heightName, Measure height) {
  private static final double ROUNDING_MM = 0.15;
  private static final Measure AS_SET = Measure.words("as set");

  static CutFigures of(BitBody body) {
    Form form = body.form();
    BitGeometry g = body.geometry();
    Outline cut = form.edgeMm() > 0 ? deep(form) : form.removed();
    Box box = cut.box();
    double width = form.edgeMm() > 0 ? box.x1() - form.edgeMm() : 2 * form.contour().to().x();
    double height = box.z1() - box.z0();
    boolean across = fixesWidth(g.shape());
    boolean upwards = fixesHeight(g);
    return new CutFigures(
        cut,
        widthName(g.shape()),
        across ? Measure.mm(nominal(g, width)) : AS_SET,
        heightName(g.shape()),
        upwards ? Measure.mm(nominal(g, height)) : AS_SET);
  }

  /** Catalogue figures are rounded: where one is meant, the drawing says that one. */
  private static double nominal(BitGeometry g, double mm) {
    BitExtent extent = BitExtent.of(g);
    for (double meant : new double[] {extent.reachMm(), extent.heightMm(), g.diameterMm()}) {
      if (Math.abs(meant - mm) < ROUNDING_MM) {
        return meant;
      }
    }
    return mm;
  }

  private static Outline deep(Form form) {
    double low = form.faceMm();
    double high = Math.max(form.floorMm(), 0);
    for (Segment segment : form.removed().segments()) {
      if (segment.at(0.5).x() > form.edgeMm() + 1e-6) {
        low = Math.min(low, Math.min(segment.from().z(), segment.to().z()));
        high = Math.max(high, Math.max(segment.from().z(), segment.to().z()));
      }
    }
    return Outline.rectangle(form.edgeMm(), low, form.removed().maxX(), high);
  }

  private static boolean fixesWidth(BitShape shape) {
    return switch (shape) {
      case V, FLAT_TIP_V, TAPERED_BALL, DOVETAIL, CHAMFER, LOCK_MITRE -> false;
      default -> true;
    };
  }

  private static boolean fixesHeight(BitGeometry g) {
    return switch (g.shape()) {
      case ROUND_OVER, BEAD, COVE, REVERSE_OGEE, THUMBNAIL, SLOT, BULL_NOSE, FINGER_PULL -> true;
      case T_SLOT, KEYHOLE -> g.depthMm().isPresent();
      default -> false;
    };
  }

  private static String widthName(BitShape shape) {
    return switch (shape) {
      case SLOT -> "depth";
      case PANEL_BEVEL, PANEL_COVE -> "reveal";
      case FINGER_JOINT, TONGUE_AND_GROOVE -> "length";
      default -> "width";
    };
  }

  private static String heightName(BitShape shape) {
    return switch (shape) {
      case BULL_NOSE, LOCK_MITRE, FINGER_JOINT, TONGUE_AND_GROOVE -> "thickness";
      case SLOT -> "width";
      default -> "height";
    };
  }
}
