package benchlore.generator.drawing.bit;

import benchlore.generator.drawing.svg.Num;
import java.util.ArrayList;
import java.util.List;

/**
 * Finds what keeps a bit from being drawn: missing, idle, impossible and contradicting measures.
 */
final class BitProblems {
  /** Catalogue figures are rounded, so this much is forgiven; a cone's height also by a share. */
  private static final double SLACK_MM = 0.1;

  private static final double SLACK_SHARE = 0.02;

  private final BitGeometry g;
  private final String name;
  private final List<String> found = new ArrayList<>();

  private BitProblems(BitGeometry g) {
    this.g = g;
    this.name = g.shape().word();
  }

  static List<String> of(BitGeometry g) {
    if (g == null) {
      throw new NullPointerException("geometry");
    }
    BitProblems problems = new BitProblems(g);
    problems.body();
    problems.bearing();
    problems.parameters();
    if (problems.found.isEmpty()) {
      problems.fit();
      problems.agreement();
    }
    return List.copyOf(problems.found);
  }

  private void add(String key, String what) {
    found.add(key + ": " + what);
  }

  private void body() {
    positive("diameterMm", g.diameterMm());
    positive("cuttingLengthMm", g.cuttingLengthMm());
    positive("shankMm", g.shankMm());
    if (g.flutes() < 1 || g.flutes() > 12) {
      add("flutes", "must be 1 to 12, is " + g.flutes());
    }
  }

  private void positive(String key, double value) {
    if (!(value > 0) || !Double.isFinite(value)) {
      add(key, "must be more than 0, is " + Num.of(value));
    }
  }

  private void bearing() {
    BearingPlace place = g.bearingPlace();
    if (g.hasBearing() && g.bearingMm().isEmpty()) {
      add("bearingMm", "missing; a bearing at " + place.word() + " needs its diameter");
    } else if (!g.hasBearing() && g.bearingMm().isPresent()) {
      add("bearingMm", "given, but bearing is none");
    }
    if (g.bearingMm().isPresent()) {
      positive("bearingMm", g.bearingMm().getAsDouble());
    }
    CutKind cut = g.shape().cut();
    if (place.atTip() && (cut == CutKind.GROOVE || cut == CutKind.SURFACE)) {
      add("bearing", name + " cuts with its tip, which leaves no room for a bearing there");
    }
    if (g.shape() == BitShape.TRIM && !g.hasBearing()) {
      add("bearing", "trim needs a bearing at tip, shank or both");
    }
    boolean byDepth = g.shape() == BitShape.RABBET || g.shape() == BitShape.SLOT;
    if (byDepth && !g.hasBearing() && g.depthMm().isEmpty()) {
      add("depthMm", "missing; " + name + " needs it where there is no bearing");
    }
  }

  private void parameters() {
    for (BitParameter parameter : BitParameter.values()) {
      boolean given = parameter.in(g).isPresent();
      if (!given && g.shape().needs(parameter)) {
        add(parameter.key(), "missing; " + name + " needs it");
      } else if (given && !g.shape().allows(parameter)) {
        add(parameter.key(), "given, but " + name + " has no use for it");
      } else if (given) {
        positive(parameter.key(), parameter.in(g).getAsDouble());
      }
    }
    if (g.angleDegrees().isPresent() && g.shape().allows(BitParameter.ANGLE)) {
      angle(g.angleDegrees().getAsDouble());
    }
  }

  private void angle(double degrees) {
    boolean included = g.shape().hasIncludedAngle();
    double limit = included ? 180 : 90;
    if (degrees >= limit) {
      String sense = included ? "included" : "from the axis";
      add(
          "angleDegrees",
          name + " takes less than " + Num.of(limit) + " " + sense + ", is " + Num.of(degrees));
    }
  }

  private void fit() {
    BitExtent extent = BitExtent.of(g);
    boolean countsBearing = g.shape().cut() == CutKind.EDGE || g.shape() == BitShape.BULL_NOSE;
    double start = countsBearing ? g.bearingRadius() : 0;
    double least = 2 * (start + extent.reachMm());
    String form = name + " of these measures needs ";
    if (needsCore() && least > g.diameterMm() - SLACK_MM) {
      add("diameterMm", form + "more than " + Num.of(least) + ", is " + Num.of(g.diameterMm()));
    } else if (least > g.diameterMm() + SLACK_MM) {
      add("diameterMm", form + "at least " + Num.of(least) + ", is " + Num.of(g.diameterMm()));
    }
    double high = extent.heightMm();
    double share = g.angleDegrees().isPresent() ? SLACK_SHARE : 0;
    boolean between =
        switch (g.shape()) {
          case TONGUE_AND_GROOVE, PANEL_BEVEL, PANEL_COVE -> true;
          default -> false;
        };
    double room = g.cuttingLengthMm();
    if (between && high > room - SLACK_MM) {
      add("cuttingLengthMm", form + "more than " + Num.of(high) + ", is " + Num.of(room));
    } else if (high > room + SLACK_MM + share * high) {
      add("cuttingLengthMm", form + "at least " + Num.of(high) + ", is " + Num.of(room));
    }
  }

  /** Whether metal or wood must be left round the axis, so that the form may not reach it. */
  private boolean needsCore() {
    return switch (g.shape()) {
      case FLAT_TIP_V, TAPERED_BALL, T_SLOT, KEYHOLE, DOVETAIL -> true;
      case LOCK_MITRE, FINGER_JOINT, TONGUE_AND_GROOVE -> true;
      case CHAMFER -> false;
      default -> g.shape().cut() == CutKind.EDGE && !g.hasBearing();
    };
  }

  /** Measures given twice must say the same. */
  private void agreement() {
    boolean edge = g.shape().cut() == CutKind.EDGE;
    if (edge && g.hasBearing() && g.depthMm().isPresent()) {
      double depth = (g.diameterMm() - g.bearingMm().orElse(0)) / 2;
      if (Math.abs(depth - g.depthMm().getAsDouble()) > 0.25) {
        add(
            "depthMm",
            "is "
                + Num.of(g.depthMm().getAsDouble())
                + ", but diameter and bearing leave "
                + Num.of(depth));
      }
    }
    if (g.shape() == BitShape.BALL && Math.abs(g.radius() - g.maxRadius()) > SLACK_MM) {
      add("radiusMm", "must be half the diameter for ball, is " + Num.of(g.radius()));
    }
    boolean head = g.shape() == BitShape.T_SLOT || g.shape() == BitShape.KEYHOLE;
    if (head && g.depthMm().orElse(Double.MAX_VALUE) <= g.cuttingLengthMm()) {
      add("depthMm", name + " must reach deeper than its head of " + Num.of(g.cuttingLengthMm()));
    }
    if (g.shape() == BitShape.THUMBNAIL && BitExtent.of(g).reachMm() > g.radius() + SLACK_MM) {
      add(
          "radiusMm",
          "thumbnail needs a radius of at least "
              + Num.of(BitExtent.of(g).reachMm())
              + " to cross from the bearing to its full diameter");
    }
    if (edge && g.bearingRadius() >= g.maxRadius()) {
      add("bearingMm", name + " needs a bearing smaller than its diameter");
    }
  }
}
