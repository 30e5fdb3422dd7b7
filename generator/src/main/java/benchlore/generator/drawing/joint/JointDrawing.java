package benchlore.generator.drawing.joint;

import benchlore.generator.drawing.svg.Label;

/** The exploded view of a joint: parts apart, grain on every face, rules of thumb beside. */
public final class JointDrawing {
  private JointDrawing() {}

  /**
   * A joint with its parts drawn apart; {@code idPrefix} is a letter, then letters, digits, - or _.
   */
  public static String draw(JointForm form, JointSizes sizes, String title, String idPrefix) {
    return scene(form, sizes).draw(new Label(idPrefix, title, JointWords.of(form)));
  }

  private static Scene scene(JointForm form, JointSizes sizes) {
    return switch (form) {
      case EDGE -> EdgeJoints.edge();
      case RUB -> EdgeJoints.rub();
      case SPLINE -> EdgeJoints.spline(sizes);
      case BISCUIT -> EdgeJoints.biscuit(sizes);
      case DOWEL -> EdgeJoints.dowel(sizes);
      case TONGUE_AND_GROOVE -> EdgeJoints.tongue(sizes);
      case SCARF -> EdgeJoints.scarf(sizes);
      case LOOSE_TENON -> FrameJoints.looseTenon(sizes);
      case MORTISE_AND_TENON -> FrameJoints.mortiseAndTenon(sizes);
      case BRIDLE -> FrameJoints.bridle(sizes);
      case HALF_LAP -> FrameJoints.halfLap(sizes);
      case SPLINED_MITRE -> FrameJoints.splinedMitre(sizes);
      case POCKET_SCREW -> FrameJoints.pocketScrew(sizes);
      case FRAME_AND_PANEL -> FrameJoints.frameAndPanel(sizes);
      case BREADBOARD -> CaseJoints.breadboard(sizes);
      case BOX -> CaseJoints.box(sizes);
      case THROUGH_DOVETAIL -> CaseJoints.throughDovetail(sizes);
      case HALF_BLIND_DOVETAIL -> CaseJoints.halfBlindDovetail(sizes);
      case REBATE -> CaseJoints.rebate(sizes);
      case HOUSING -> CaseJoints.housing(sizes);
    };
  }
}
