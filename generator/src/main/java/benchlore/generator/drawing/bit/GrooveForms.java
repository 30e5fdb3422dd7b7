package benchlore.generator.drawing.bit;

import benchlore.generator.drawing.svg.Point;

/** Bits that work in a face. */
final class GrooveForms {
  private GrooveForms() {}

  static Form of(BitGeometry g) {
    return switch (g.shape()) {
      case STRAIGHT -> straight(g);
      case CORNER_RADIUS -> cornerRadius(g);
      case BALL -> ball(g);
      case TAPERED_BALL -> taperedBall(g);
      case V, FLAT_TIP_V -> cone(g);
      case DOVETAIL -> dovetail(g);
      case T_SLOT, KEYHOLE -> headOnNeck(g);
      case SURFACING -> surfacing(g);
      case POINT_ROUND_OVER -> pointRoundOver(g);
      default -> throw new IllegalArgumentException("not a groove: " + g.shape());
    };
  }

  private static Form straight(BitGeometry g) {
    Outline profile =
        Pen.at(0, 0).lineTo(g.maxRadius(), 0).lineTo(g.maxRadius(), g.cuttingLengthMm()).outline();
    return Form.inFace(profile, 0, depth(g));
  }

  private static Form surfacing(BitGeometry g) {
    Form flat = straight(g);
    return Form.inFace(flat.profile(), 0, Math.min(g.cuttingLengthMm() / 2, g.diameterMm() / 16));
  }

  private static Form cornerRadius(BitGeometry g) {
    double r = g.radius();
    double flat = g.maxRadius() - r;
    Outline profile =
        Pen.at(0, 0)
            .lineTo(flat, 0)
            .bulgeTo(g.maxRadius(), r, new Point(flat, r))
            .lineTo(g.maxRadius(), g.cuttingLengthMm())
            .outline();
    return Form.inFace(profile, 0, Math.min(g.cuttingLengthMm(), Math.max(depth(g), r * 1.25)));
  }

  private static Form ball(BitGeometry g) {
    double r = g.maxRadius();
    Outline profile =
        Pen.at(0, 0).bulgeTo(r, r, new Point(0, r)).lineTo(r, g.cuttingLengthMm()).outline();
    return Form.inFace(profile, 0, r);
  }

  private static Form taperedBall(BitGeometry g) {
    double r = g.tipMm().orElse(0) / 2;
    double lean = g.slopeAngle();
    Point tangent = new Point(r * Math.cos(lean), r - r * Math.sin(lean));
    double top = tangent.z() + (g.maxRadius() - tangent.x()) / g.slope();
    Outline profile =
        Pen.at(0, 0)
            .bulgeTo(tangent.x(), tangent.z(), new Point(0, r))
            .lineTo(g.maxRadius(), Math.min(top, g.cuttingLengthMm()))
            .lineTo(g.maxRadius(), g.cuttingLengthMm())
            .outline();
    return Form.inFace(profile, 0, Math.min(g.cuttingLengthMm() * 0.6, g.diameterMm() * 1.5));
  }

  private static Form cone(BitGeometry g) {
    double flat = g.tipMm().orElse(0) / 2;
    double top = Math.min((g.maxRadius() - flat) / g.slope(), g.cuttingLengthMm());
    Outline profile =
        Pen.at(0, 0)
            .lineTo(flat, 0)
            .lineTo(g.maxRadius(), top)
            .lineTo(g.maxRadius(), g.cuttingLengthMm())
            .outline();
    return Form.inFace(profile, 0, top * 0.75);
  }

  private static Form dovetail(BitGeometry g) {
    double high = g.cuttingLengthMm();
    Outline profile =
        Pen.at(0, 0)
            .lineTo(g.maxRadius(), 0)
            .lineTo(g.maxRadius() - high * g.slope(), high)
            .outline();
    return Form.inFace(profile, 0, high * 0.8);
  }

  private static Form headOnNeck(BitGeometry g) {
    double neck = g.tipMm().orElse(0) / 2;
    double head = g.cuttingLengthMm();
    double depth = g.depthMm().orElse(head * 2.2);
    Outline profile =
        Pen.at(0, 0)
            .lineTo(g.maxRadius(), 0)
            .lineTo(g.maxRadius(), head)
            .lineTo(neck, head)
            .outline();
    return Form.inFace(profile, (depth - head) * 1.15, depth);
  }

  private static Form pointRoundOver(BitGeometry g) {
    double r = g.radius();
    double flat = g.maxRadius() - r;
    double low = g.cuttingLengthMm() - r > r / 2 ? r / 4 : 0;
    Outline profile =
        Pen.at(0, 0)
            .lineTo(flat, 0)
            .lineTo(flat, low)
            .hollowTo(g.maxRadius(), low + r, new Point(g.maxRadius(), low))
            .lineTo(g.maxRadius(), g.cuttingLengthMm())
            .outline();
    return Form.inFace(profile, 0, low + r);
  }

  private static double depth(BitGeometry g) {
    return Math.min(g.cuttingLengthMm() * 0.8, g.diameterMm() * 0.9);
  }
}
