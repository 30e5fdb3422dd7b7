package benchlore.generator.drawing.bit;

import benchlore.generator.drawing.svg.Num;
import benchlore.generator.drawing.svg.Point;
import benchlore.generator.drawing.svg.Svg;

/**
 * Puts millimetres on the page, with z up becoming y down.
 *
 * @param scale page units a millimetre
 * @param originX page x of the axis
 * @param originY page y of height zero
 */
record Frame(double scale, double originX, double originY) {
  double x(double mm) {
    return originX + scale * mm;
  }

  double y(double mm) {
    return originY - scale * mm;
  }

  Point page(Point p) {
    return new Point(x(p.x()), y(p.z()));
  }

  /** Path data of an outline. */
  String path(Outline outline) {
    return "M" + pair(outline.from()) + tail(outline);
  }

  String closedPath(Outline outline) {
    return path(outline) + "Z";
  }

  /** Path data that goes on from the outline's first point. */
  String tail(Outline outline) {
    StringBuilder d = new StringBuilder();
    for (Segment segment : outline.segments()) {
      if (segment instanceof Arc arc) {
        String r = Num.of(arc.radius() * scale);
        d.append('A').append(r).append(' ').append(r).append(" 0 ");
        d.append(Math.abs(arc.sweep()) > Math.PI ? "1 " : "0 ");
        d.append(arc.sweep() > 0 ? "0 " : "1 ");
      } else {
        d.append('L');
      }
      d.append(pair(segment.to()));
    }
    return d.toString();
  }

  private String pair(Point p) {
    return Svg.pair(x(p.x()), y(p.z()));
  }
}
