package benchlore.generator.drawing.joint;

/** What a joint's drawing shows, for someone who can't see it. */
final class JointWords {
  private JointWords() {}

  static String of(JointForm form) {
    return "The parts drawn apart, seen from the right and above. " + shape(form);
  }

  private static String shape(JointForm form) {
    return switch (form) {
      case EDGE -> "Two boards edge to edge, grain alongside; glue on one edge, pushed together.";
      case RUB -> "One board on the edge of another, slid to and fro on wet glue, no clamps.";
      case SPLINE -> "A groove along both edges, and a strip across them that fills both.";
      case BISCUIT -> "A short slot in each edge, and an oval wafer half in each.";
      case DOWEL -> "Two round holes in each edge, and round pins between them.";
      case TONGUE_AND_GROOVE -> "A tongue left along one edge goes into a groove in the other.";
      case SCARF -> "Two long slopes that lie on each other and make one longer board.";
      case LOOSE_TENON -> "A slot in the upright, one in the rail's end, a rounded tenon between.";
      case MORTISE_AND_TENON ->
          "A slot in the upright; the rail ends in a thinner tenon with shoulders all round.";
      case BRIDLE ->
          "The upright ends in two cheeks with a gap, the rail in a tongue between them.";
      case HALF_LAP -> "Each part is cut to half its thickness where they cross.";
      case SPLINED_MITRE -> "Both ends cut at 45 degrees, with a thin key across the slope.";
      case POCKET_SCREW ->
          "Two slanting pockets in the rail's back lead screws through its end into the upright.";
      case FRAME_AND_PANEL ->
          "Upright and rail have a groove along their inside; a panel stands loose in it.";
      case BREADBOARD ->
          "A cross piece with a groove takes a tongue on the end of the top; three pins from above, the"
              + " outer two in slots.";
      case BOX -> "Straight fingers at the end of one board fill the gaps at the end of the other.";
      case THROUGH_DOVETAIL ->
          "Tails that widen to the end of one board, pins between them at the end of the other.";
      case HALF_BLIND_DOVETAIL ->
          "Tails on the side board, sockets in the front that stop short, so its face is whole.";
      case REBATE -> "A step cut along the end of the upright takes the end of the other board.";
      case HOUSING -> "A channel across the upright takes the whole end of a shelf.";
    };
  }
}
