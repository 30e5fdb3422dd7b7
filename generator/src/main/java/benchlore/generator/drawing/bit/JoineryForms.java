package benchlore.generator.drawing.bit;

import benchlore.generator.drawing.svg.Point;

/** Wide bits for frames, panels and joints. */
final class JoineryForms {
  /** Share of a panel's reveal that slopes; the rest is the flat that sits in the frame. */
  private static final double SLOPING = 0.75;

  private JoineryForms() {}

  static Form of(BitGeometry g) {
    return switch (g.shape()) {
      case PANEL_BEVEL -> panelBevel(g);
      case PANEL_COVE -> panelCove(g);
      case LOCK_MITRE -> lockMitre(g);
      case FINGER_JOINT -> fingerJoint(g);
      case TONGUE_AND_GROOVE -> tongue(g);
      default -> throw new IllegalArgumentException("not joinery: " + g.shape());
    };
  }

  private static double panelStep(BitGeometry g) {
    return g.stepMm().orElse(Math.min(1.5, g.cuttingLengthMm() / 8));
  }

  private static Form panelBevel(BitGeometry g) {
    double reveal = g.depthMm().orElse(0);
    double step = panelStep(g);
    double high = Math.min(reveal * SLOPING / g.slope(), g.cuttingLengthMm() - step);
    Outline profile =
        Pen.at(0, 0)
            .lineTo(g.maxRadius() - high * g.slope(), 0)
            .lineTo(g.maxRadius(), high)
            .lineTo(g.maxRadius(), g.cuttingLengthMm())
            .outline();
    return Form.onEdge(profile, g.maxRadius() - reveal, high + step);
  }

  private static Form panelCove(BitGeometry g) {
    double reveal = g.depthMm().orElse(0);
    double step = panelStep(g);
    double r = g.radius();
    double room = Math.min(r, g.cuttingLengthMm() - step);
    double widest = Math.sqrt(room * (2 * r - room));
    double wide = Math.min(Math.min(r, reveal * SLOPING), widest);
    double start = g.maxRadius() - wide;
    double high = BitExtent.sagitta(r, wide);
    Outline profile =
        Pen.at(0, 0)
            .lineTo(start, 0)
            .bulgeTo(g.maxRadius(), high, new Point(start, r))
            .lineTo(g.maxRadius(), g.cuttingLengthMm())
            .outline();
    return Form.onEdge(profile, g.maxRadius() - reveal, high + step);
  }

  /** The tooth is the same after half a turn round the cone's middle, so two pieces interlock. */
  private static Form lockMitre(BitGeometry g) {
    double high = g.cuttingLengthMm();
    double narrow = g.maxRadius() - high * g.slope();
    double half = high / 10;
    double middle = narrow + high / 2 * g.slope();
    double jut = high * 0.12 * Math.min(1, g.slope());
    Outline profile =
        Pen.at(0, 0)
            .lineTo(narrow, 0)
            .lineTo(middle - half * g.slope(), high / 2 - half)
            .lineTo(middle + jut, high / 2 - half)
            .lineTo(middle - jut, high / 2 + half)
            .lineTo(middle + half * g.slope(), high / 2 + half)
            .lineTo(g.maxRadius(), high)
            .outline();
    return Form.throughEdge(profile, narrow, 0, high);
  }

  private static Form fingerJoint(BitGeometry g) {
    double high = g.cuttingLengthMm();
    double root = g.maxRadius() - g.depthMm().orElse(0);
    int teeth = teeth(g);
    double pitch = high / (teeth + 0.5);
    double lean = pitch * 0.1;
    Pen pen = Pen.at(0, 0).lineTo(root, 0).lineTo(root, lean);
    for (int i = 0; i < teeth; i++) {
      double foot = i * pitch;
      pen.lineTo(g.maxRadius(), foot + 2 * lean)
          .lineTo(g.maxRadius(), foot + pitch / 2)
          .lineTo(root, foot + pitch / 2 + lean)
          .lineTo(root, foot + pitch + lean);
    }
    pen.lineTo(g.maxRadius(), high - pitch / 2 + 2 * lean).lineTo(g.maxRadius(), high);
    return Form.throughEdge(pen.outline(), root, 0, high);
  }

  /** Whole teeth, with half a tooth left over so that the mating piece is the same one turned. */
  private static int teeth(BitGeometry g) {
    double pitch = g.stepMm().orElse(6);
    return (int) Math.max(1, Math.round(g.cuttingLengthMm() / pitch - 0.5));
  }

  private static Form tongue(BitGeometry g) {
    double high = g.cuttingLengthMm();
    double shoulder = (high - g.tipMm().orElse(0)) / 2;
    double root = g.maxRadius() - g.depthMm().orElse(0);
    Outline profile =
        Pen.at(0, 0)
            .lineTo(g.maxRadius(), 0)
            .lineTo(g.maxRadius(), shoulder)
            .lineTo(root, shoulder)
            .lineTo(root, high - shoulder)
            .lineTo(g.maxRadius(), high - shoulder)
            .lineTo(g.maxRadius(), high)
            .outline();
    return Form.throughEdge(profile, root, 0, high);
  }
}
