package benchlore.generator.drawing.bit;

import benchlore.generator.drawing.svg.Svg;

/** Hints how the flutes run: wings beside a straight core, or gullets that wind or lean. */
final class Flutes {
  private static final int STEPS = 16;
  private static final double CORE = 0.42;

  /** Sideways travel of a helical edge for each unit of height; 30 degrees is ordinary. */
  private static final double HELIX = Math.tan(Math.toRadians(30));

  private static final double SHEAR = Math.tan(Math.toRadians(8));

  private Flutes() {}

  /** Draws inside the cutter, which is also the clip. */
  static void draw(Svg svg, String clipId, BitBody body, Frame frame) {
    svg.clippedGroup(clipId, frame.closedPath(body.cutter()));
    fill(svg, body, frame);
    svg.endGroup();
  }

  /** Draws on a plain cylinder with winding flutes, which needs no clip; on others nothing. */
  static void drawOnCylinder(Svg svg, BitBody body, Frame frame) {
    BitGeometry g = body.geometry();
    boolean cylinder = g.shape() == BitShape.STRAIGHT || g.shape() == BitShape.TRIM;
    if (cylinder && g.fluteForm() != FluteForm.STRAIGHT) {
      fill(svg, body, frame);
    }
  }

  private static void fill(Svg svg, BitBody body, Frame frame) {
    BitGeometry g = body.geometry();
    double high = g.cuttingLengthMm();
    switch (g.fluteForm()) {
      case STRAIGHT -> wings(svg, body, frame);
      case SHEAR -> gullets(svg, frame, g, new Turn(0, high, SHEAR));
      case UPCUT -> gullets(svg, frame, g, new Turn(0, high, HELIX));
      case DOWNCUT -> gullets(svg, frame, g, new Turn(0, high, -HELIX));
      case COMPRESSION -> {
        double split = high * 0.35;
        gullets(svg, frame, g, new Turn(0, split, HELIX));
        gullets(svg, frame, g, new Turn(split, high, -HELIX));
      }
    }
  }

  private static void wings(Svg svg, BitBody body, Frame frame) {
    double high = body.geometry().cuttingLengthMm();
    double far = body.geometry().maxRadius();
    double core = far * CORE;
    svg.path("drw-gullet", frame.closedPath(Outline.rectangle(core, 0, far * 1.1, high)));
    svg.path("drw-gullet", frame.closedPath(Outline.rectangle(-far * 1.1, 0, -core, high)));
  }

  /** Heights between which a helix runs, and its sideways travel for each unit of height. */
  private record Turn(double z0, double z1, double lean) {
    double within(double z) {
      return Math.max(z0, Math.min(z1, z));
    }

    /** Where all helices meet the axis: the end of the range that is the same for both hands. */
    double start() {
      return lean > 0 ? z1 : z0;
    }
  }

  private static void gullets(Svg svg, Frame frame, BitGeometry g, Turn turn) {
    double perRadian = g.maxRadius() / turn.lean();
    double advance = Math.abs(2 * Math.PI * perRadian / g.flutes());
    double reach = Math.abs(Math.PI * perRadian / 2) + advance;
    int first = (int) Math.floor((turn.z0() - reach - turn.start()) / advance);
    int last = (int) Math.ceil((turn.z1() + reach - turn.start()) / advance);
    for (int i = first; i <= last; i++) {
      double middle = turn.start() + i * advance + advance / 4;
      gullet(svg, frame, turn, new Gullet(g.maxRadius(), middle, perRadian, advance * 0.42));
    }
  }

  /** The visible half turn of one gullet round the cutter's front. */
  private record Gullet(double radius, double middle, double perRadian, double high) {}

  private static void gullet(Svg svg, Frame frame, Turn turn, Gullet gullet) {
    double half = Math.abs(Math.PI * gullet.perRadian() / 2) + gullet.high();
    if (gullet.middle() + half < turn.z0() || gullet.middle() - half > turn.z1()) {
      return;
    }
    StringBuilder d = new StringBuilder();
    for (int i = 0; i <= 2 * STEPS + 1; i++) {
      boolean back = i > STEPS;
      double share = back ? (2.0 * STEPS + 1 - i) / STEPS : (double) i / STEPS;
      double angle = Math.PI * (share - 0.5);
      double z = gullet.middle() + gullet.perRadian() * angle + (back ? gullet.high() : 0);
      d.append(i == 0 ? 'M' : 'L');
      d.append(Svg.pair(frame.x(gullet.radius() * Math.sin(angle)), frame.y(turn.within(z))));
    }
    svg.path("drw-gullet", d.append('Z').toString());
  }
}
