package benchlore.generator.drawing.bit;

import benchlore.generator.drawing.svg.Point;

/** Bits that shape an edge. */
final class EdgeForms {
  /** How far round its ball a finger pull's hollow turns above the middle, radians. */
  private static final double PULL_TURN = Math.toRadians(50);

  private EdgeForms() {}

  static Form of(BitGeometry g) {
    return switch (g.shape()) {
      case TRIM -> trim(g);
      case CHAMFER -> chamfer(g);
      case ROUND_OVER, BEAD -> roundOver(g);
      case COVE -> cove(g);
      case OGEE -> ogee(g);
      case REVERSE_OGEE -> reverseOgee(g);
      case THUMBNAIL -> thumbnail(g);
      case RABBET -> rabbet(g);
      case SLOT -> slot(g);
      case BULL_NOSE -> bullNose(g);
      case FINGER_PULL -> fingerPull(g);
      default -> throw new IllegalArgumentException("not an edge: " + g.shape());
    };
  }

  /** Where the work's edge stands: at the bearing, or else so that the form just fits. */
  static double edge(BitGeometry g, double reach) {
    return g.hasBearing() ? g.bearingRadius() : g.maxRadius() - reach;
  }

  private static Form trim(BitGeometry g) {
    double r = g.maxRadius();
    double high = g.cuttingLengthMm();
    Outline profile = Pen.at(0, 0).lineTo(r, 0).lineTo(r, high).outline();
    double overhang = r - Math.min(r * 0.6, high * 0.25);
    double thick = Math.min(high * 0.75, r * 3);
    boolean templateAbove = g.bearingPlace().onShank();
    double low = templateAbove ? high - thick : 0;
    return Form.throughEdge(profile, overhang, low, low + thick);
  }

  /** Without a bearing the work's edge may stand anywhere along the cone. */
  private static Form chamfer(BitGeometry g) {
    double loose = Math.max(0, g.maxRadius() - g.cuttingLengthMm() * g.slope());
    double start = g.hasBearing() ? g.bearingRadius() : loose;
    double edge = g.hasBearing() ? start : start + (g.maxRadius() - start) * 0.2;
    double top = Math.min((g.maxRadius() - start) / g.slope(), g.cuttingLengthMm());
    Outline profile =
        Pen.at(0, 0)
            .lineTo(start, 0)
            .lineTo(g.maxRadius(), top)
            .lineTo(g.maxRadius(), g.cuttingLengthMm())
            .outline();
    return Form.onEdge(profile, edge, top * 0.8);
  }

  private static Form roundOver(BitGeometry g) {
    double r = g.radius();
    double step = g.stepMm().orElse(0);
    double edge = edge(g, r + step);
    double start = edge + step;
    double low = step > 0 ? 0 : Math.max(0, Math.min(r / 2, (g.cuttingLengthMm() - r) / 2));
    Outline profile =
        Pen.at(0, 0)
            .lineTo(start, 0)
            .lineTo(start, low)
            .hollowTo(start + r, low + r, new Point(start + r, low))
            .lineTo(g.maxRadius(), low + r)
            .lineTo(g.maxRadius(), g.cuttingLengthMm())
            .outline();
    return Form.onEdge(profile, edge, low + r + step);
  }

  private static Form cove(BitGeometry g) {
    double r = g.radius();
    double start = g.maxRadius() - r;
    Outline profile =
        Pen.at(0, 0)
            .lineTo(start, 0)
            .bulgeTo(g.maxRadius(), r, new Point(start, r))
            .lineTo(g.maxRadius(), g.cuttingLengthMm())
            .outline();
    return Form.onEdge(profile, edge(g, r), r);
  }

  private static Form ogee(BitGeometry g) {
    double r = g.radius();
    double edge = edge(g, 2 * r);
    Outline profile =
        Pen.at(0, 0)
            .lineTo(edge, 0)
            .bulgeTo(edge + r, r, new Point(edge, r))
            .hollowTo(edge + 2 * r, 2 * r, new Point(edge + 2 * r, r))
            .lineTo(g.maxRadius(), 2 * r)
            .lineTo(g.maxRadius(), g.cuttingLengthMm())
            .outline();
    return Form.onEdge(profile, edge, Math.min(g.cuttingLengthMm(), 2.3 * r));
  }

  private static Form reverseOgee(BitGeometry g) {
    double r = g.radius();
    double edge = edge(g, 2 * r);
    Outline profile =
        Pen.at(0, 0)
            .lineTo(edge, 0)
            .hollowTo(edge + r, r, new Point(edge + r, 0))
            .lineTo(g.maxRadius() - r, r)
            .bulgeTo(g.maxRadius(), 2 * r, new Point(g.maxRadius() - r, 2 * r))
            .lineTo(g.maxRadius(), g.cuttingLengthMm())
            .outline();
    return Form.onEdge(profile, edge, 2 * r);
  }

  private static Form thumbnail(BitGeometry g) {
    double r = g.radius();
    double edge = edge(g, g.depthMm().orElse(r));
    double wide = g.maxRadius() - edge;
    double high = BitExtent.sagitta(r, wide);
    Outline profile =
        Pen.at(0, 0)
            .lineTo(edge, 0)
            .hollowTo(g.maxRadius(), high, new Point(g.maxRadius(), high - r))
            .lineTo(g.maxRadius(), g.cuttingLengthMm())
            .outline();
    return Form.onEdge(profile, edge, high + g.stepMm().orElse(0));
  }

  private static Form rabbet(BitGeometry g) {
    double edge = edge(g, g.depthMm().orElse(0));
    Outline profile =
        Pen.at(0, 0).lineTo(g.maxRadius(), 0).lineTo(g.maxRadius(), g.cuttingLengthMm()).outline();
    return Form.onEdge(profile, edge, g.cuttingLengthMm() * 0.8);
  }

  private static Form slot(BitGeometry g) {
    double edge = edge(g, g.depthMm().orElse(0));
    double arbor = Math.min(edge * 0.8, g.shankMm() * 0.4);
    double high = g.cuttingLengthMm();
    Outline profile =
        Pen.at(0, 0)
            .lineTo(g.maxRadius(), 0)
            .lineTo(g.maxRadius(), high)
            .lineTo(arbor, high)
            .outline();
    double wall = Math.max(high, (g.maxRadius() - edge) * 0.6);
    return new Form(profile, wall * 1.4, edge, -wall, high + wall);
  }

  private static Form bullNose(BitGeometry g) {
    double r = g.radius();
    double wide = g.maxRadius();
    double land = (g.cuttingLengthMm() - 2 * r) / 2;
    Point centre = new Point(wide, land + r);
    Outline profile =
        Pen.at(0, 0)
            .lineTo(wide, 0)
            .lineTo(wide, land)
            .hollowTo(wide - r, land + r, centre)
            .hollowTo(wide, land + 2 * r, centre)
            .lineTo(wide, g.cuttingLengthMm())
            .outline();
    return Form.throughEdge(profile, edge(g, r), land, land + 2 * r);
  }

  private static Form fingerPull(BitGeometry g) {
    double r = g.radius();
    double lip = r / 3;
    Point ball = new Point(g.maxRadius() - r, r);
    Point join = new Point(ball.x() + r * Math.cos(PULL_TURN), ball.z() + r * Math.sin(PULL_TURN));
    Point lipCentre =
        new Point(
            ball.x() + (r + lip) * Math.cos(PULL_TURN), ball.z() + (r + lip) * Math.sin(PULL_TURN));
    double face = lipCentre.z() + lip;
    Outline profile =
        Pen.at(0, 0)
            .lineTo(ball.x(), 0)
            .bulgeTo(join.x(), join.z(), ball)
            .hollowTo(lipCentre.x(), face, lipCentre)
            .lineTo(g.maxRadius(), face)
            .lineTo(g.maxRadius(), g.cuttingLengthMm())
            .outline();
    return Form.onEdge(profile, edge(g, r), face);
  }

  /** Height of a finger pull's form for radius 1. */
  static double pullHeight() {
    return 1 + 4 * Math.sin(PULL_TURN) / 3 + 1.0 / 3;
  }
}
