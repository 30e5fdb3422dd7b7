package benchlore.generator.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * A square of film or wood, or a board from the side, and the marks a fault leaves on it.
 *
 * <p>The square runs from {@link #LOW} to {@link #HIGH} both ways, y down.
 */
final class FaultCanvas {
  static final double SIDE = 96;
  static final double LOW = 5;
  static final double HIGH = 91;
  static final double MID = 48;

  /** Something drawn at a place, in a size. */
  interface Mark {
    void at(double x, double y, double size);
  }

  private final Svg svg;
  private final String clip;
  private final Scatter scatter = new Scatter(4_711);
  private boolean clipped;

  FaultCanvas(Svg svg, String clip) {
    this.svg = svg;
    this.clip = clip;
  }

  /** A face under a clear film, with a streak of reflected light. */
  FaultCanvas film() {
    face("drw-film");
    return path("drw-shine", "M5 66L66 5L80 5L5 80Z");
  }

  /** A bare face, grain running across. */
  FaultCanvas wood() {
    return face("drw-board").grain(LOW + 5, HIGH, 9);
  }

  /** A plain face. */
  FaultCanvas face(String look) {
    clipped = true;
    svg.clippedGroup(clip, "M5 5L91 5L91 91L5 91Z");
    svg.rect(look, LOW, LOW, HIGH - LOW, HIGH - LOW);
    return this;
  }

  /** Grain lines from side to side. */
  FaultCanvas grain(double from, double to, double step) {
    for (double y = from; y < to; y += step) {
      wave("drw-board-grain", y, 1.3, 31);
    }
    return this;
  }

  /** A board seen from the side or the end: its top as drawn, straight down and closed below. */
  FaultCanvas section(double bottom, double... top) {
    Trail trail = new Trail(top[0], top[1]);
    for (int i = 2; i < top.length; i += 2) {
      trail.to(top[i], top[i + 1]);
    }
    trail.to(top[top.length - 2], bottom).to(top[0], bottom);
    return path("drw-board", trail.closed());
  }

  /** A smooth line from side to side. */
  FaultCanvas wave(String look, double y, double swing, double length) {
    double start = LOW - 8 - scatter.between(0, length);
    StringBuilder d = new StringBuilder("M").append(Svg.pair(start, y));
    d.append('Q').append(Svg.pair(start + length / 4, y - swing));
    d.append(' ').append(Svg.pair(start + length / 2, y));
    for (double x = start + length; x < HIGH + length; x += length / 2) {
      d.append('T').append(Svg.pair(x, y));
    }
    return path(look, d.toString());
  }

  /** The same mark all over: {@code across} cells each way, every one a little off its place. */
  FaultCanvas all(int across, double low, double high, Mark mark) {
    double cell = (HIGH - LOW) / across;
    for (int row = 0; row < across; row++) {
      for (int column = 0; column < across; column++) {
        double x = LOW + cell * (column + 0.5) + scatter.next() * cell * 0.3;
        double y = LOW + cell * (row + 0.5) + scatter.next() * cell * 0.3;
        mark.at(x, y, scatter.between(low, high));
      }
    }
    return this;
  }

  /** A mark at each of some places: x, y and size in turn. */
  FaultCanvas each(Mark mark, double... places) {
    for (int i = 0; i < places.length; i += 3) {
      mark.at(places[i], places[i + 1], places[i + 2]);
    }
    return this;
  }

  /** A closed shape round a place, out of true by a share of its size. */
  FaultCanvas blob(String look, double x, double y, double size) {
    int corners = 9;
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < corners; i++) {
      double angle = 2 * Math.PI * i / corners;
      double r = size * (1 + scatter.next() * 0.22);
      points.add(new Point(x + r * 1.25 * Math.cos(angle), y + r * 0.8 * Math.sin(angle)));
    }
    return path(look, round(points));
  }

  /** A closed curve through the middles of a polygon's sides. */
  private static String round(List<Point> points) {
    Point last = points.get(points.size() - 1);
    StringBuilder d = new StringBuilder("M").append(middle(last, points.get(0)));
    for (int i = 0; i < points.size(); i++) {
      Point next = points.get((i + 1) % points.size());
      d.append('Q').append(Svg.pair(points.get(i).x(), points.get(i).z()));
      d.append(' ').append(middle(points.get(i), next));
    }
    return d.append('Z').toString();
  }

  private static String middle(Point a, Point b) {
    return Svg.pair((a.x() + b.x()) / 2, (a.z() + b.z()) / 2);
  }

  /** A crooked crack between two places, a point at its end. */
  FaultCanvas crack(double x0, double y0, double x1, double y1, double wide) {
    Trail there = new Trail(x0, y0 - wide / 2);
    int steps = 6;
    double[] off = new double[steps];
    for (int i = 1; i < steps; i++) {
      off[i] = scatter.next() * 1.6;
      double share = i / (double) steps;
      double half = wide / 2 * (1 - share);
      there.to(x0 + (x1 - x0) * share, y0 + (y1 - y0) * share + off[i] - half);
    }
    there.to(x1, y1);
    for (int i = steps - 1; i > 0; i--) {
      double share = i / (double) steps;
      double half = wide / 2 * (1 - share);
      there.to(x0 + (x1 - x0) * share, y0 + (y1 - y0) * share + off[i] + half);
    }
    return path("drw-pit", there.to(x0, y0 + wide / 2).closed());
  }

  /** A net of cracks with cells of about a size. */
  FaultCanvas net(String look, int across) {
    double cell = (HIGH - LOW) / across;
    Point[][] knots = new Point[across + 1][across + 1];
    for (int i = 0; i <= across; i++) {
      for (int j = 0; j <= across; j++) {
        double x = LOW + cell * i + scatter.next() * cell * 0.33;
        double y = LOW + cell * j + scatter.next() * cell * 0.33;
        knots[i][j] = new Point(x, y);
      }
    }
    StringBuilder d = new StringBuilder();
    for (int i = 0; i <= across; i++) {
      Trail down = new Trail(knots[i][0].x(), knots[i][0].z());
      Trail along = new Trail(knots[0][i].x(), knots[0][i].z());
      for (int j = 1; j <= across; j++) {
        down.to(knots[i][j].x(), knots[i][j].z());
        along.to(knots[j][i].x(), knots[j][i].z());
      }
      d.append(down.open()).append(along.open());
    }
    return path(look, d.toString());
  }

  FaultCanvas circle(String look, double x, double y, double radius) {
    svg.circle(look, x, y, radius);
    return this;
  }

  FaultCanvas line(String look, double x0, double y0, double x1, double y1) {
    svg.line(look, x0, y0, x1, y1);
    return this;
  }

  FaultCanvas path(String look, String d) {
    svg.path(look, d);
    return this;
  }

  double any(double low, double high) {
    return scatter.between(low, high);
  }

  String end() {
    if (clipped) {
      svg.endGroup();
    }
    return svg.end();
  }
}
