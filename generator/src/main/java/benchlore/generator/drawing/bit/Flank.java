package benchlore.generator.drawing.bit;

import benchlore.generator.drawing.svg.Num;
import benchlore.generator.drawing.svg.Point;
import benchlore.generator.drawing.svg.Svg;
import java.util.Optional;

/** Marks a flank's angle, either between both flanks or against a line along the axis. */
record Flank(Line line, boolean included) {
  private static final double LEVEL = 1e-6;
  private static final double MARK = 26;

  /** The longest sloping line of a profile, if the bit has an angle. */
  static Optional<Flank> of(BitGeometry g, Outline profile) {
    if (g.angleDegrees().isEmpty()) {
      return Optional.empty();
    }
    Line longest = null;
    for (Segment segment : profile.segments()) {
      if (segment instanceof Line line && slopes(line) && longer(line, longest)) {
        longest = line;
      }
    }
    boolean included = g.shape().hasIncludedAngle();
    return Optional.ofNullable(longest).map(line -> new Flank(line, included));
  }

  private static boolean slopes(Line line) {
    return Math.abs(line.from().x() - line.to().x()) > LEVEL
        && Math.abs(line.from().z() - line.to().z()) > LEVEL;
  }

  private static boolean longer(Line line, Line than) {
    return than == null
        || line.from().distance(line.to()) > than.from().distance(than.to()) + LEVEL;
  }

  String label() {
    return included ? "included" : "off the axis";
  }

  /** Draws the mark; answers where a callout may point. */
  Point mark(Svg svg, Frame frame) {
    return included ? betweenFlanks(svg, frame) : fromAxis(svg, frame);
  }

  private Point betweenFlanks(Svg svg, Frame frame) {
    Point b = frame.page(line.at(0.6));
    double mirrored = 2 * frame.originX() - b.x();
    double rise = (line.to().x() - line.from().x()) / (line.to().z() - line.from().z());
    double apexDown = (b.x() - frame.originX()) / rise;
    String r = Num.of(Math.hypot(b.x() - frame.originX(), apexDown));
    svg.path(
        "drw-dim",
        "M" + Svg.pair(mirrored, b.z()) + "A" + r + " " + r + " 0 0 1 " + Svg.pair(b.x(), b.z()));
    return b;
  }

  private Point fromAxis(Svg svg, Frame frame) {
    Point foot = frame.page(line.from());
    Point far = frame.page(line.to());
    double r = Math.min(MARK, foot.distance(far) * 0.8);
    double ux = (far.x() - foot.x()) / foot.distance(far);
    double uz = (far.z() - foot.z()) / foot.distance(far);
    svg.line("drw-axis", foot.x(), foot.z(), foot.x(), foot.z() - r - 6);
    Point end = new Point(foot.x() + ux * r, foot.z() + uz * r);
    svg.path(
        "drw-dim",
        "M"
            + Svg.pair(foot.x(), foot.z() - r)
            + "A"
            + Num.of(r)
            + " "
            + Num.of(r)
            + " 0 0 "
            + (ux > 0 ? "1 " : "0 ")
            + Svg.pair(end.x(), end.z()));
    double half = Math.atan2(ux, -uz) / 2;
    return new Point(foot.x() + r * Math.sin(half), foot.z() - r * Math.cos(half));
  }
}
