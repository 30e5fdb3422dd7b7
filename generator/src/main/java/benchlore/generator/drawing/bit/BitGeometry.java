package benchlore.generator.drawing.bit;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * The measures of a router bit, enough to draw it and the cut it leaves.
 *
 * <p>Making one never refuses a number, so that a loader can make it first and then report
 * everything {@link #problems} finds. Drawing refuses a geometry that has problems. Example: {@code
 * BitGeometry.of(BitShape.ROUND_OVER, 31.7, 13, 12.7).withRadiusMm(9.5)
 * .withBearing(BearingPlace.TIP, 12.7)}.
 *
 * @param shape the profile
 * @param diameterMm the largest cutting diameter
 * @param cuttingLengthMm the height of the cutting edges along the axis; of the head for t-slot and
 *     keyhole
 * @param shankMm the shank's diameter
 * @param flutes number of cutting edges, 1 to 12
 * @param fluteForm how they run
 * @param bearingPlace where the bearing sits
 * @param bearingMm the bearing's diameter; empty without a bearing
 * @param radiusMm radius of the arc or arcs
 * @param angleDegrees included angle for v, flat-tip-v and tapered-ball; from the axis for chamfer,
 *     dovetail, panel-bevel and lock-mitre
 * @param tipMm flat of flat-tip-v, ball diameter of tapered-ball, neck diameter of t-slot and
 *     keyhole, tongue thickness of tongue-and-groove
 * @param depthMm reach past the bearing of rabbet, slot and thumbnail, a panel's reveal, finger or
 *     tongue length; for t-slot and keyhole from the face to the slot's floor
 * @param stepMm fillet of bead, thumbnail and panel; pitch of finger-joint
 */
public record BitGeometry(
    BitShape shape,
    double diameterMm,
    double cuttingLengthMm,
    double shankMm,
    int flutes,
    FluteForm fluteForm,
    BearingPlace bearingPlace,
    OptionalDouble bearingMm,
    OptionalDouble radiusMm,
    OptionalDouble angleDegrees,
    OptionalDouble tipMm,
    OptionalDouble depthMm,
    OptionalDouble stepMm) {

  /** Refuses only null. */
  public BitGeometry {
    Objects.requireNonNull(shape, "shape");
    Objects.requireNonNull(fluteForm, "fluteForm");
    Objects.requireNonNull(bearingPlace, "bearingPlace");
    Objects.requireNonNull(bearingMm, "bearingMm");
    Objects.requireNonNull(radiusMm, "radiusMm");
    Objects.requireNonNull(angleDegrees, "angleDegrees");
    Objects.requireNonNull(tipMm, "tipMm");
    Objects.requireNonNull(depthMm, "depthMm");
    Objects.requireNonNull(stepMm, "stepMm");
  }

  /** A bit with two straight flutes, no bearing and none of the optional measures. */
  public static BitGeometry of(
      BitShape shape, double diameterMm, double cuttingLengthMm, double shankMm) {
    OptionalDouble no = OptionalDouble.empty();
    return new BitGeometry(
        shape,
        diameterMm,
        cuttingLengthMm,
        shankMm,
        2,
        FluteForm.STRAIGHT,
        BearingPlace.NONE,
        no,
        no,
        no,
        no,
        no,
        no);
  }

  /**
   * What is wrong with a geometry, each line as {@code component: what is wrong}; empty if it can
   * be drawn. Never throws for a bad number.
   */
  public static List<String> problems(BitGeometry geometry) {
    return BitProblems.of(geometry);
  }

  /** The same bit with other flutes. */
  public BitGeometry withFlutes(int count, FluteForm form) {
    return new BitGeometry(
        shape,
        diameterMm,
        cuttingLengthMm,
        shankMm,
        count,
        form,
        bearingPlace,
        bearingMm,
        radiusMm,
        angleDegrees,
        tipMm,
        depthMm,
        stepMm);
  }

  /** The same bit with a bearing of this diameter. */
  public BitGeometry withBearing(BearingPlace place, double mm) {
    return new BitGeometry(
        shape,
        diameterMm,
        cuttingLengthMm,
        shankMm,
        flutes,
        fluteForm,
        place,
        some(mm),
        radiusMm,
        angleDegrees,
        tipMm,
        depthMm,
        stepMm);
  }

  /** The same bit with this radius. */
  public BitGeometry withRadiusMm(double mm) {
    return with(some(mm), angleDegrees, tipMm, depthMm, stepMm);
  }

  /** The same bit with this angle. */
  public BitGeometry withAngleDegrees(double degrees) {
    return with(radiusMm, some(degrees), tipMm, depthMm, stepMm);
  }

  /** The same bit with this tip, neck or tongue. */
  public BitGeometry withTipMm(double mm) {
    return with(radiusMm, angleDegrees, some(mm), depthMm, stepMm);
  }

  /** The same bit with this depth. */
  public BitGeometry withDepthMm(double mm) {
    return with(radiusMm, angleDegrees, tipMm, some(mm), stepMm);
  }

  /** The same bit with this step. */
  public BitGeometry withStepMm(double mm) {
    return with(radiusMm, angleDegrees, tipMm, depthMm, some(mm));
  }

  private BitGeometry with(
      OptionalDouble radius,
      OptionalDouble angle,
      OptionalDouble tip,
      OptionalDouble depth,
      OptionalDouble step) {
    return new BitGeometry(
        shape,
        diameterMm,
        cuttingLengthMm,
        shankMm,
        flutes,
        fluteForm,
        bearingPlace,
        bearingMm,
        radius,
        angle,
        tip,
        depth,
        step);
  }

  private static OptionalDouble some(double value) {
    return OptionalDouble.of(value);
  }

  boolean hasBearing() {
    return bearingPlace != BearingPlace.NONE;
  }

  double maxRadius() {
    return diameterMm / 2;
  }

  double radius() {
    return radiusMm.orElse(maxRadius());
  }

  double bearingRadius() {
    return bearingMm.orElse(0) / 2;
  }

  /** Tangent of the flank's angle from the axis. */
  double slope() {
    boolean included = shape.hasIncludedAngle();
    double degrees = angleDegrees.orElse(90);
    return Math.tan(Math.toRadians(included ? degrees / 2 : degrees));
  }

  double slopeAngle() {
    return Math.atan(slope());
  }
}
