package benchlore.generator.drawing.bit;

/**
 * The room a form needs: how far out from its start (bearing, tip or axis) and how far up.
 *
 * @param reachMm outwards
 * @param heightMm along the axis
 */
record BitExtent(double reachMm, double heightMm) {

  static BitExtent of(BitGeometry g) {
    double r = g.radius();
    double step = g.stepMm().orElse(0);
    double depth = g.depthMm().orElse(0);
    double tip = g.tipMm().orElse(0);
    double high = g.cuttingLengthMm();
    return switch (g.shape()) {
      case STRAIGHT, TRIM, SURFACING -> new BitExtent(0, 0);
      case RABBET, SLOT -> new BitExtent(depth, 0);
      case CORNER_RADIUS, COVE, ROUND_OVER, POINT_ROUND_OVER -> new BitExtent(r, r);
      case BALL -> new BitExtent(0, g.maxRadius());
      case BEAD -> new BitExtent(r + step, r + step);
      case OGEE, REVERSE_OGEE -> new BitExtent(2 * r, 2 * r);
      case BULL_NOSE -> new BitExtent(r, 2 * r);
      case FINGER_PULL -> new BitExtent(r, r * EdgeForms.pullHeight());
      case V, FLAT_TIP_V -> new BitExtent(tip / 2, (g.maxRadius() - tip / 2) / g.slope());
      case TAPERED_BALL -> new BitExtent(tip / 2, taperedHeight(g, tip / 2));
      case CHAMFER -> chamfer(g);
      case DOVETAIL, LOCK_MITRE -> new BitExtent(high * g.slope(), 0);
      case T_SLOT, KEYHOLE -> new BitExtent(tip / 2, 0);
      case PANEL_BEVEL, PANEL_COVE -> new BitExtent(depth, step);
      case FINGER_JOINT -> new BitExtent(depth, g.stepMm().orElse(0));
      case TONGUE_AND_GROOVE -> new BitExtent(depth, tip);
      case THUMBNAIL -> thumbnail(g);
    };
  }

  private static BitExtent chamfer(BitGeometry g) {
    if (!g.hasBearing()) {
      return new BitExtent(g.cuttingLengthMm() * g.slope(), 0);
    }
    return new BitExtent(0, (g.maxRadius() - g.bearingRadius()) / g.slope());
  }

  private static BitExtent thumbnail(BitGeometry g) {
    double wide =
        g.hasBearing() ? g.maxRadius() - g.bearingRadius() : g.depthMm().orElse(g.radius());
    return new BitExtent(wide, sagitta(g.radius(), wide) + g.stepMm().orElse(0));
  }

  private static double taperedHeight(BitGeometry g, double ball) {
    double lean = g.slopeAngle();
    double rise = (g.maxRadius() - ball * Math.cos(lean)) / g.slope();
    return ball - ball * Math.sin(lean) + rise;
  }

  /** How far a circle of radius {@code r} falls away over a distance; the radius at most. */
  static double sagitta(double r, double distance) {
    double d = Math.min(r, distance);
    return r - Math.sqrt(r * r - d * d);
  }
}
