package benchlore.generator.picture;

import benchlore.generator.drawing.svg.Point;
import java.awt.geom.AffineTransform;
import java.awt.geom.Arc2D;
import java.awt.geom.PathIterator;

/**
 * An arc of path data, known by its ends; appendix F.6 of SVG 1.1 turns it to one known by its
 * centre.
 *
 * @param rx one radius, more than 0
 * @param ry the other, more than 0
 * @param turn how far the ellipse is turned, radians
 * @param large whether it is the longer way round
 * @param sweep whether it runs clockwise, y down
 */
record EllipticArc(double rx, double ry, double turn, boolean large, boolean sweep) {
  /** Its line from one place to another; radii too small to reach are grown until they do. */
  PathIterator between(Point from, Point to) {
    double[] end = {(from.x() - to.x()) / 2, (from.z() - to.z()) / 2};
    AffineTransform.getRotateInstance(-turn).transform(end, 0, end, 0, 1);
    double lack = Math.hypot(end[0] / rx, end[1] / ry);
    double a = rx * Math.max(1, lack);
    double b = ry * Math.max(1, lack);
    double off = lack >= 1 ? 0 : Math.sqrt(1 / (lack * lack) - 1) * (large == sweep ? -1 : 1);
    double x = off * a * end[1] / b;
    double y = -off * b * end[0] / a;
    double start = Math.atan2((end[1] - y) / b, (end[0] - x) / a);
    double extent = Math.atan2((-end[1] - y) / b, (-end[0] - x) / a) - start;
    if (sweep && extent < 0) {
      extent += 2 * Math.PI;
    } else if (!sweep && extent > 0) {
      extent -= 2 * Math.PI;
    }
    Arc2D.Double arc = new Arc2D.Double();
    // The platform's arcs count anticlockwise where y runs up.
    arc.setArc(
        x - a, y - b, 2 * a, 2 * b, -Math.toDegrees(start), -Math.toDegrees(extent), Arc2D.OPEN);
    Point middle = from.towards(to, 0.5);
    AffineTransform placed = AffineTransform.getTranslateInstance(middle.x(), middle.z());
    placed.rotate(turn);
    return arc.getPathIterator(placed);
  }
}
