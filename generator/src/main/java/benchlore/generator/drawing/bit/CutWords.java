package benchlore.generator.drawing.bit;

import java.util.List;

/** Says in words what a cut looks like and how the router is fed. */
final class CutWords {
  private CutWords() {}

  static String cut(BitGeometry g) {
    List<String> measures = Words.shape(g);
    String sizes = measures.isEmpty() ? "" : " (" + String.join(", ", measures) + ")";
    String bearing = g.hasBearing() ? " Guided by the " + Words.bearing(g) + "." : "";
    return "Section of the work with the bit in place, shank up. "
        + left(g.shape())
        + " Bit of "
        + Words.mm(g.diameterMm())
        + sizes
        + "."
        + bearing
        + " "
        + PlanView.Kind.of(g).words();
  }

  private static String left(BitShape shape) {
    return switch (shape) {
      case STRAIGHT -> "It leaves a groove with a flat floor and square sides.";
      case TRIM -> "It leaves the work level with the template.";
      case CORNER_RADIUS -> "It leaves a flat floor with rounded corners.";
      case BALL -> "It leaves a half-round channel.";
      case TAPERED_BALL -> "It leaves a narrow groove with a round floor and sloping sides.";
      case V -> "It leaves a V-groove; the deeper, the wider.";
      case FLAT_TIP_V -> "It leaves a V-groove with a flat floor.";
      case CHAMFER -> "It leaves a sloping flat along the edge.";
      case ROUND_OVER -> "It leaves the upper edge rounded.";
      case BEAD -> "It leaves a rounded edge with a small step above and beside it.";
      case COVE -> "It leaves a quarter-round hollow along the edge.";
      case OGEE -> "It leaves an S-curve, round above and hollow below.";
      case REVERSE_OGEE -> "It leaves an S-curve, hollow above and round below.";
      case DOVETAIL -> "It leaves a groove wider at the floor than at the mouth.";
      case RABBET -> "It leaves a square step along the edge.";
      case SLOT -> "It leaves a groove in the edge, with wood above and below.";
      case T_SLOT -> "It leaves a slot in the form of a T; a straight bit opens it first.";
      case KEYHOLE -> "Plunged and moved along, it leaves a slot that holds a screw head.";
      case SURFACING -> "Passes that overlap leave the face flat; their depth is drawn too large.";
      case POINT_ROUND_OVER -> "It leaves a groove between two rounded edges.";
      case BULL_NOSE -> "It leaves the whole edge half-round.";
      case PANEL_BEVEL -> "It leaves a flat tongue, a slope and a step up to the panel's face.";
      case PANEL_COVE -> "It leaves a flat tongue, a hollow and a step up to the panel's face.";
      case LOCK_MITRE -> "It leaves a mitre with a tooth that fits the same cut turned over.";
      case FINGER_JOINT -> "It leaves wedge-shaped fingers that fit the same cut turned over.";
      case TONGUE_AND_GROOVE ->
          "It leaves a tongue between two shoulders; a slot cutter makes its groove.";
      case THUMBNAIL -> "It leaves a shallow round below a small step.";
      case FINGER_PULL -> "It leaves a hollow for the fingers behind a rounded lip.";
    };
  }
}
