package benchlore.generator.drawing.bit;

import benchlore.generator.drawing.svg.Dimensions;
import benchlore.generator.drawing.svg.Label;
import benchlore.generator.drawing.svg.Measure;
import benchlore.generator.drawing.svg.Point;
import benchlore.generator.drawing.svg.Svg;

/** The dimensioned side view of a bit, shank up. */
final class BitDrawing {
  private static final double HEIGHT = 272;
  private static final double CENTRE = 160;
  private static final double ROOM_WIDE = 144;
  private static final double ROOM_HIGH = 172;
  private static final double TIP_Y = 222;
  private static final double SHANK_TOP = 12;

  private BitDrawing() {}

  static String draw(BitGeometry g, String title, String idPrefix) {
    BitBody body = BitBody.of(g);
    double widest = 2 * Math.max(body.form().profile().maxX(), g.bearingRadius());
    widest = Math.max(widest, g.shankMm());
    double scale = Math.min(ROOM_WIDE / widest, ROOM_HIGH / (body.highest() - body.lowest()));
    Frame frame = new Frame(scale, CENTRE, TIP_Y + scale * body.lowest());
    Svg svg = Svg.titled(Dimensions.PAGE_WIDTH, HEIGHT, new Label(idPrefix, title, Words.bit(g)));
    double top = (frame.originY() - SHANK_TOP) / scale;
    svg.path("drw-metal", metal(frame, body.side(top)));
    Flutes.draw(svg, idPrefix + "-c", body, frame);
    svg.path("drw-edge", frame.path(body.form().profile()));
    svg.path("drw-edge", frame.path(body.form().profile().mirrored()));
    body.drawBearings(svg, frame, false);
    svg.line("drw-axis", CENTRE, 4, CENTRE, TIP_Y + 5);
    dimension(svg, body, frame);
    return svg.end();
  }

  /** Both sides, the shank broken off with a wave. */
  static String metal(Frame frame, Outline side) {
    Outline left = side.mirrored().reversed();
    double half = frame.x(side.to().x()) - frame.originX();
    String wave =
        "q" + Svg.pair(-half / 2, -6) + " " + Svg.pair(-half, 0) + "t" + Svg.pair(-half, 0);
    return frame.path(side) + wave + frame.tail(left) + "Z";
  }

  private static void dimension(Svg svg, BitBody body, Frame frame) {
    BitGeometry g = body.geometry();
    Outline profile = body.form().profile();
    Dimensions dims = new Dimensions(svg);
    double high = g.cuttingLengthMm();
    dims.upright(
        new Point(frame.x(-profile.reachAt(high)), frame.y(high)),
        new Point(frame.x(-profile.reachAt(0)), frame.y(0)),
        "cut length",
        Measure.mm(high));
    double widestAt = frame.y(heightOfWidest(profile));
    dims.level(
        TIP_Y + 14,
        new Point(frame.x(-profile.maxX()), widestAt),
        new Point(frame.x(profile.maxX()), widestAt),
        new Dimensions.Level("diameter", Measure.mm(g.diameterMm()), false));
    callouts(dims, svg, body, frame);
    dims.finish(16, TIP_Y + 6);
  }

  private static void callouts(Dimensions dims, Svg svg, BitBody body, Frame frame) {
    BitGeometry g = body.geometry();
    Outline profile = body.form().profile();
    dims.callout(new Point(frame.x(body.shankRadius()), 26), "shank", Measure.mm(g.shankMm()));
    double middle = g.cuttingLengthMm() * 0.9;
    dims.callout(
        new Point(frame.x(profile.reachAt(middle)), frame.y(middle)),
        g.fluteForm().word(),
        Measure.words(g.flutes() + (g.flutes() == 1 ? " flute" : " flutes")));
    if (g.bearingPlace().atTip()) {
      double low = -body.bearingHeight() * 0.5;
      bearing(dims, g, new Point(frame.x(g.bearingRadius()), frame.y(low)));
    } else if (g.bearingPlace().onShank()) {
      double up = body.neckTop() + body.bearingHeight() * 0.5;
      bearing(dims, g, new Point(frame.x(g.bearingRadius()), frame.y(up)));
    }
    Callouts.shape(dims, svg, body, frame);
  }

  private static void bearing(Dimensions dims, BitGeometry g, Point at) {
    dims.callout(at, "bearing", Measure.mm(g.bearingMm().orElse(0)));
  }

  private static double heightOfWidest(Outline profile) {
    double lowest = Double.POSITIVE_INFINITY;
    for (Segment segment : profile.segments()) {
      for (Point p : new Point[] {segment.from(), segment.to()}) {
        if (p.x() > profile.maxX() - 1e-6) {
          lowest = Math.min(lowest, p.z());
        }
      }
    }
    return lowest;
  }
}
