package benchlore.generator.drawing;

/** Hints how the flutes run: helix lines, leaning lines, or the edge of the gullet. */
final class Flutes {
  private static final int STEPS = 12;

  private Flutes() {}

  /** Draws inside the cutter, which is also the clip. */
  static void draw(Svg svg, String clipId, BitBody body, Frame frame) {
    BitGeometry g = body.geometry();
    svg.clippedGroup(clipId, frame.closedPath(body.cutter()));
    double high = g.cuttingLengthMm();
    switch (g.fluteForm()) {
      case STRAIGHT -> gullet(svg, body, frame);
      case SHEAR -> helix(svg, frame, g, new Turn(0, high, Math.tan(Math.toRadians(8))));
      case UPCUT -> helix(svg, frame, g, new Turn(0, high, Math.tan(Math.toRadians(30))));
      case DOWNCUT -> helix(svg, frame, g, new Turn(0, high, -Math.tan(Math.toRadians(30))));
      case COMPRESSION -> {
        double split = high * 0.35;
        helix(svg, frame, g, new Turn(0, split, Math.tan(Math.toRadians(30))));
        helix(svg, frame, g, new Turn(split, high, -Math.tan(Math.toRadians(30))));
      }
    }
    svg.endGroup();
  }

  /** The body behind the cutting edges: the profile drawn in towards the axis. */
  private static void gullet(Svg svg, BitBody body, Frame frame) {
    Frame inner = new Frame(frame.scale(), frame.originX(), frame.originY());
    double top = body.geometry().cuttingLengthMm();
    double core = body.geometry().maxRadius() * 0.42;
    for (int side = -1; side <= 1; side += 2) {
      double x = inner.x(side * core);
      svg.line("drw-flute", x, inner.y(0), x, inner.y(top));
    }
  }

  /** Heights between which a helix runs, and its sideways travel for each unit of height. */
  private record Turn(double z0, double z1, double lean) {}

  private static void helix(Svg svg, Frame frame, BitGeometry g, Turn turn) {
    double r = g.maxRadius();
    double perRadian = r / turn.lean();
    double advance = Math.abs(2 * Math.PI * perRadian / g.flutes());
    double half = Math.abs(Math.PI * perRadian / 2);
    for (double middle = turn.z0() - half; middle <= turn.z1() + half; middle += advance) {
      strand(svg, frame, turn, new Strand(r, middle + advance * 0.3, perRadian));
    }
  }

  /** One visible half turn of an edge round the cutter's front. */
  private record Strand(double radius, double middle, double perRadian) {}

  private static void strand(Svg svg, Frame frame, Turn turn, Strand strand) {
    StringBuilder d = new StringBuilder();
    for (int i = 0; i <= STEPS; i++) {
      double angle = -Math.PI / 2 + Math.PI * i / STEPS;
      double z = strand.middle() + strand.perRadian() * angle;
      if (z >= turn.z0() - 1e-9 && z <= turn.z1() + 1e-9) {
        d.append(d.length() == 0 ? 'M' : 'L');
        d.append(Svg.pair(frame.x(strand.radius() * Math.sin(angle)), frame.y(z)));
      }
    }
    if (d.indexOf("L") > 0) {
      svg.path("drw-flute", d.toString());
    }
  }
}
