package benchlore.generator.drawing.joint;

import java.util.Map;

/** Sizes every joint can be drawn by. */
public final class SampleJoints {
  private SampleJoints() {}

  public static JointSizes sizes(JointForm form) {
    double share =
        switch (form) {
          case DOWEL, HALF_LAP, REBATE -> 0.5;
          case SPLINED_MITRE -> 0.25;
          case BOX -> 0.75;
          default -> 1 / 3.0;
        };
    return new JointSizes(
        Map.of(
            "thickness-share", one(share),
            "lap-share", one(0.2),
            "slope", one(form == JointForm.SCARF ? 8 : 7),
            "angle", one(15),
            "depth", one(form == JointForm.LOOSE_TENON ? 25 : 10),
            "length", new JointSizes.Size(50, 60),
            "thickness", one(4),
            "gap", one(2)));
  }

  private static JointSizes.Size one(double value) {
    return new JointSizes.Size(value, value);
  }
}
