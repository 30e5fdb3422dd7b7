package benchlore.generator.drawing.joint;

import java.util.Arrays;
import java.util.Optional;

/** Joints that can be drawn. */
public enum JointForm {
  /** Boards edge to edge, clamped. */
  EDGE("edge"),
  /** Short boards edge to edge, rubbed together without clamps. */
  RUB("rub"),
  /** A strip in grooves along both edges. */
  SPLINE("spline"),
  /** Pressed wafers in short slots. */
  BISCUIT("biscuit"),
  /** Round pins. */
  DOWEL("dowel"),
  /** A tongue along one edge, a groove along the other. */
  TONGUE_AND_GROOVE("tongue-and-groove"),
  /** Two long slopes. */
  SCARF("scarf"),
  /** A tenon of its own in two mortises. */
  LOOSE_TENON("loose-tenon"),
  /** A tenon in a mortise. */
  MORTISE_AND_TENON("mortise-and-tenon"),
  /** An open mortise at the end. */
  BRIDLE("bridle"),
  /** Each part half away. */
  HALF_LAP("half-lap"),
  /** Two ends at 45 degrees with a key across. */
  SPLINED_MITRE("splined-mitre"),
  /** Screws at a slant. */
  POCKET_SCREW("pocket-screw"),
  /** A panel loose in a grooved frame. */
  FRAME_AND_PANEL("frame-and-panel"),
  /** A cross piece on the end of a top. */
  BREADBOARD("breadboard"),
  /** Straight fingers. */
  BOX("box"),
  /** Tails and pins seen from both sides. */
  THROUGH_DOVETAIL("through-dovetail"),
  /** Tails and pins hidden from the front. */
  HALF_BLIND_DOVETAIL("half-blind-dovetail"),
  /** A step along the edge. */
  REBATE("rebate"),
  /** A channel across a board. */
  HOUSING("housing");

  private final String word;

  JointForm(String word) {
    this.word = word;
  }

  /** The word used in content. */
  public String word() {
    return word;
  }

  /** The form of a word. */
  public static Optional<JointForm> parse(String word) {
    return Arrays.stream(values()).filter(form -> form.word.equals(word)).findFirst();
  }
}
