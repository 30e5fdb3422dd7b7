package benchlore.generator.drawing.surface;

import benchlore.generator.drawing.svg.Arrows;
import benchlore.generator.drawing.svg.Dimensions;
import benchlore.generator.drawing.svg.Label;
import benchlore.generator.drawing.svg.Measure;
import benchlore.generator.drawing.svg.Num;
import benchlore.generator.drawing.svg.Point;
import benchlore.generator.drawing.svg.Svg;
import benchlore.generator.drawing.svg.Trail;

/** Abrasive grains at scale beside a bar of known length; the same grain size, the same picture. */
final class GritDrawing {
  private static final double HEIGHT = 190;
  private static final double LEFT = 20;
  private static final double TOP = 12;
  private static final double WIDE = 280;
  private static final double HIGH = 120;
  private static final double PITCH = 1.35;

  private GritDrawing() {}

  static String draw(double micron, String title, String idPrefix) {
    double field = field(micron);
    double scale = WIDE / field;
    String words =
        "Abrasive grains of about "
            + Num.of(micron)
            + " micrometres, seen from above, drawn to"
            + " scale on a field "
            + Num.of(field)
            + " micrometres wide.";
    Svg svg = Svg.titled(Dimensions.PAGE_WIDTH, HEIGHT, new Label(idPrefix, title, words));
    svg.rect("drw-template", LEFT, TOP, WIDE, HIGH);
    svg.clippedGroup(
        idPrefix + "-c",
        new Trail(LEFT, TOP)
            .to(LEFT + WIDE, TOP)
            .to(LEFT + WIDE, TOP + HIGH)
            .to(LEFT, TOP + HIGH)
            .closed());
    grains(svg, micron * scale);
    svg.endGroup();
    double bar = field / 4 * scale;
    double y = TOP + HIGH + 14;
    Arrows.between(svg, new Point(LEFT, y), new Point(LEFT + bar, y));
    svg.figure("start", LEFT, y + 18, Measure.microns(field / 4));
    svg.text("end", LEFT + WIDE, y + 4, "one grain, about");
    svg.figure("end", LEFT + WIDE, y + 18, Measure.microns(micron));
    return svg.end();
  }

  /** Width of the field: as wide as gives between some five and thirty grains across. */
  private static double field(double micron) {
    double field = 10_000;
    while (field / micron > 45) {
      field /= 5;
    }
    return field;
  }

  private static void grains(Svg svg, double size) {
    Scatter scatter = new Scatter(20_011);
    double pitch = size * PITCH;
    StringBuilder all = new StringBuilder();
    int row = 0;
    for (double y = TOP; y < TOP + HIGH + pitch; y += pitch * 0.87) {
      double shift = row++ % 2 == 0 ? 0 : pitch / 2;
      for (double x = LEFT + shift; x < LEFT + WIDE + pitch; x += pitch) {
        double cx = x + scatter.next() * size * 0.15;
        double cy = y + scatter.next() * size * 0.15;
        all.append(grain(scatter, cx, cy, size));
      }
    }
    svg.path("drw-grain", all.toString());
  }

  private static String grain(Scatter scatter, double x, double y, double size) {
    int corners = size < 8 ? 4 : 6;
    double turn = scatter.next() * Math.PI;
    Trail trail = null;
    for (int i = 0; i < corners; i++) {
      double r = size / 2 * (1 + scatter.next() * 0.22);
      double angle = turn + 2 * Math.PI * i / corners;
      double px = x + r * Math.cos(angle);
      double py = y + r * Math.sin(angle);
      trail = trail == null ? new Trail(px, py) : trail.to(px, py);
    }
    return trail == null ? "" : trail.closed();
  }
}
