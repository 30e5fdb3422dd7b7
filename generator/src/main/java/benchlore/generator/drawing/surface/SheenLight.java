package benchlore.generator.drawing.surface;

import benchlore.generator.drawing.svg.Box;
import benchlore.generator.drawing.svg.Num;

/** The light mirrored in a film. */
final class SheenLight {
  private SheenLight() {}

  /**
   * Light over a box, its strength the product of two curves: gradients only, which print as they
   * show.
   *
   * @param brightest opacity where both curves are 1
   */
  static String over(
      String id, Box box, BlurredPanes level, BlurredPanes upright, double brightest) {
    StringBuilder out = new StringBuilder();
    gradient(out, id + "-x", " x1=\"" + Num.of(box.x0()) + "\" x2=\"" + Num.of(box.x1()), "y");
    stops(out, level, box.x0(), box.x1(), brightest);
    gradient(out, id + "-y", " y1=\"" + Num.of(box.z0()) + "\" y2=\"" + Num.of(box.z1()), "x");
    stops(out, upright, box.z0(), box.z1(), 1);
    out.append("<mask id=\"").append(id).append("-m\" maskUnits=\"userSpaceOnUse\"");
    out.append(place(box)).append("><rect").append(place(box));
    out.append(" fill=\"url(#").append(id).append("-y)\"/></mask><rect").append(place(box));
    out.append(" fill=\"url(#").append(id).append("-x)\" mask=\"url(#").append(id);
    out.append("-m)\"/>");
    return out.toString();
  }

  private static void gradient(StringBuilder out, String id, String ends, String other) {
    out.append("<linearGradient id=\"").append(id).append("\" gradientUnits=\"userSpaceOnUse\"");
    out.append(ends).append("\" ").append(other).append("1=\"0\" ").append(other);
    out.append("2=\"0\">");
  }

  private static void stops(
      StringBuilder out, BlurredPanes curve, double low, double high, double brightest) {
    for (BlurredPanes.Stop stop : curve.stops(low, high)) {
      String offset = Num.of((stop.at() - low) / (high - low) * 100);
      String strength = Num.of(Math.min(1, Math.max(0, stop.light())) * brightest);
      out.append("<stop class=\"drw-light\" offset=\"").append(offset);
      out.append("%\" stop-opacity=\"").append(strength).append("\"/>");
    }
    out.append("</linearGradient>");
  }

  private static String place(Box box) {
    return " x=\""
        + Num.of(box.x0())
        + "\" y=\""
        + Num.of(box.z0())
        + "\" width=\""
        + Num.of(box.x1() - box.x0())
        + "\" height=\""
        + Num.of(box.z1() - box.z0())
        + "\"";
  }
}
