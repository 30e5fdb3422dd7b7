package benchlore.generator.picture;

import benchlore.generator.drawing.svg.Point;
import java.awt.geom.AffineTransform;

/**
 * Puts millimetres on the page.
 *
 * @param scale page units a millimetre
 * @param middle the place, millimetres
 * @param on where it comes to lie, page units
 */
record Placing(double scale, Point middle, Point on) {
  /** A place on the page. */
  Point of(Point p) {
    return new Point(on.x() + scale * (p.x() - middle.x()), on.z() + scale * (p.z() - middle.z()));
  }

  /** The same for outlines, turned anticlockwise about the middle. */
  AffineTransform turned(double degrees) {
    AffineTransform move = AffineTransform.getTranslateInstance(on.x(), on.z());
    move.scale(scale, scale);
    move.rotate(Math.toRadians(-degrees));
    move.translate(-middle.x(), -middle.z());
    return move;
  }
}
