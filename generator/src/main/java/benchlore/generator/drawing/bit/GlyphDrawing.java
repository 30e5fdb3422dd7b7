package benchlore.generator.drawing.bit;

import benchlore.generator.drawing.svg.Svg;

/** A bit's silhouette, small. */
final class GlyphDrawing {
  private static final double SIDE = 48;
  private static final double MARGIN = 3;

  private GlyphDrawing() {}

  static String draw(BitGeometry g) {
    BitBody body = BitBody.of(g);
    double widest = Math.max(body.form().profile().maxX(), g.bearingRadius());
    double high = body.highest() - body.lowest();
    double shank = Math.max(high * 0.3, widest * 0.35);
    double room = SIDE - 2 * MARGIN;
    double scale = Math.min(room / (2 * widest), room / (high + shank));
    double spare = room - scale * (high + shank);
    Frame frame = new Frame(scale, SIDE / 2, SIDE - MARGIN - spare / 2 + scale * body.lowest());
    Outline side = body.side(body.highest() + shank);
    Outline both = side.then(side.mirrored().reversed());
    Svg svg = Svg.decorative(SIDE);
    svg.path("drw-metal", frame.closedPath(both));
    Flutes.drawOnCylinder(svg, body, frame);
    svg.path("drw-edge", frame.path(body.form().profile()));
    svg.path("drw-edge", frame.path(body.form().profile().mirrored()));
    body.drawBearings(svg, frame, false);
    return svg.end();
  }
}
