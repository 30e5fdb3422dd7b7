package benchlore.generator.drawing.bit;

import benchlore.generator.drawing.svg.Num;
import java.util.ArrayList;
import java.util.List;

/** Says in words what a drawing shows. */
final class Words {
  private Words() {}

  static String bit(BitGeometry g) {
    List<String> parts = new ArrayList<>();
    parts.add("cutting diameter " + mm(g.diameterMm()));
    parts.add("cutting length " + mm(g.cuttingLengthMm()));
    parts.addAll(shape(g));
    parts.add("shank " + mm(g.shankMm()));
    if (g.hasBearing()) {
      parts.add(bearing(g));
    }
    parts.add(g.flutes() + " " + g.fluteForm().word() + (g.flutes() == 1 ? " flute" : " flutes"));
    return upper(g.shape().word())
        + " bit from the side, shank up: "
        + String.join(", ", parts)
        + ". "
        + form(g.shape());
  }

  static String bearing(BitGeometry g) {
    String where =
        switch (g.bearingPlace()) {
          case NONE -> "no bearing";
          case TIP -> "bearing at the tip";
          case SHANK -> "bearing on the shank";
          case BOTH -> "bearings at tip and shank";
        };
    return where + ", " + mm(g.bearingMm().orElse(0)) + " across";
  }

  static List<String> shape(BitGeometry g) {
    List<String> parts = new ArrayList<>();
    g.radiusMm().ifPresent(v -> parts.add("radius " + mm(v)));
    g.angleDegrees().ifPresent(v -> parts.add("angle " + Num.of(v) + " degrees"));
    g.tipMm().ifPresent(v -> parts.add(tipName(g.shape()) + " " + mm(v)));
    g.depthMm().ifPresent(v -> parts.add("depth " + mm(v)));
    g.stepMm().ifPresent(v -> parts.add("step " + mm(v)));
    return parts;
  }

  static String tipName(BitShape shape) {
    return switch (shape) {
      case T_SLOT, KEYHOLE -> "neck";
      case TAPERED_BALL -> "ball";
      case TONGUE_AND_GROOVE -> "tongue";
      default -> "flat tip";
    };
  }

  /** What the cutting edge looks like. */
  static String form(BitShape shape) {
    return switch (shape) {
      case STRAIGHT -> "Flat tip and parallel sides.";
      case TRIM -> "Parallel sides, level with the bearing.";
      case CORNER_RADIUS -> "Flat tip with rounded corners.";
      case BALL -> "The tip is half a ball.";
      case TAPERED_BALL -> "A small ball at the tip, then a slender cone.";
      case V -> "A pointed cone.";
      case FLAT_TIP_V -> "A cone with a flat tip.";
      case CHAMFER -> "A cone, widest at the top.";
      case ROUND_OVER -> "The cutting edge is a hollow quarter circle.";
      case BEAD -> "A hollow quarter circle with a small step at each end.";
      case COVE -> "The cutting edge bulges out in a quarter circle.";
      case OGEE -> "An S-curve that bulges near the tip and is hollow above.";
      case REVERSE_OGEE -> "An S-curve that is hollow near the tip and bulges above.";
      case DOVETAIL -> "Widest at the tip, narrower above.";
      case RABBET -> "A flat cutter, wider than its bearing.";
      case SLOT -> "A thin disc on an arbor.";
      case T_SLOT -> "A disc on a neck.";
      case KEYHOLE -> "A small disc on a neck.";
      case SURFACING -> "Wide and flat.";
      case POINT_ROUND_OVER -> "A plunging tip between two hollow quarter circles.";
      case BULL_NOSE -> "The cutting edge is a hollow half circle.";
      case PANEL_BEVEL -> "Wide, with a flat, then a slope, then an upright step.";
      case PANEL_COVE -> "Wide, with a flat, then a bulging curve, then an upright step.";
      case LOCK_MITRE -> "A cone with a tooth half way up.";
      case FINGER_JOINT -> "A stack of wedge-shaped teeth.";
      case TONGUE_AND_GROOVE -> "Two discs with a gap between them.";
      case THUMBNAIL -> "A shallow hollow curve below an upright step.";
      case FINGER_PULL -> "A bulb with a narrow waist above it.";
    };
  }

  static String mm(double value) {
    return Num.of(value) + " mm";
  }

  private static String upper(String word) {
    return Character.toUpperCase(word.charAt(0)) + word.substring(1);
  }
}
