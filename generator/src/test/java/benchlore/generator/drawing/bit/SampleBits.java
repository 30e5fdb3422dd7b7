package benchlore.generator.drawing.bit;

import static benchlore.generator.drawing.bit.BearingPlace.BOTH;
import static benchlore.generator.drawing.bit.BearingPlace.SHANK;
import static benchlore.generator.drawing.bit.BearingPlace.TIP;

import java.util.LinkedHashMap;
import java.util.Map;

/** Invented bits of ordinary sizes: every shape at least once. */
public final class SampleBits {
  private SampleBits() {}

  public static Map<String, BitGeometry> all() {
    Map<String, BitGeometry> bits = new LinkedHashMap<>();
    faces(bits);
    edges(bits);
    joinery(bits);
    return bits;
  }

  private static BitGeometry bit(BitShape shape, double diameter, double length, double shank) {
    return BitGeometry.of(shape, diameter, length, shank);
  }

  private static void faces(Map<String, BitGeometry> bits) {
    bits.put("straight", bit(BitShape.STRAIGHT, 12.7, 25.4, 12.7));
    bits.put("upcut", bit(BitShape.STRAIGHT, 6.35, 25.4, 6.35).withFlutes(2, FluteForm.UPCUT));
    bits.put("downcut", bit(BitShape.STRAIGHT, 6.35, 22, 6.35).withFlutes(2, FluteForm.DOWNCUT));
    bits.put(
        "compression",
        bit(BitShape.STRAIGHT, 9.52, 28.58, 9.52).withFlutes(2, FluteForm.COMPRESSION));
    bits.put("corner-radius", bit(BitShape.CORNER_RADIUS, 31.75, 16, 12.7).withRadiusMm(6.35));
    bits.put("ball", bit(BitShape.BALL, 12.7, 19, 6.35));
    bits.put(
        "tapered-ball",
        bit(BitShape.TAPERED_BALL, 6.35, 25.5, 6.35).withAngleDegrees(10.8).withTipMm(2));
    bits.put("v", bit(BitShape.V, 25.4, 16, 6.35).withAngleDegrees(90));
    bits.put("v-60", bit(BitShape.V, 12.7, 11, 6.35).withAngleDegrees(60));
    bits.put(
        "flat-tip-v", bit(BitShape.FLAT_TIP_V, 25.4, 12, 6.35).withAngleDegrees(100).withTipMm(3));
    bits.put("dovetail", bit(BitShape.DOVETAIL, 12.7, 12.7, 6.35).withAngleDegrees(14));
    bits.put("t-slot", bit(BitShape.T_SLOT, 20, 8, 12.7).withTipMm(9).withDepthMm(18));
    bits.put("keyhole", bit(BitShape.KEYHOLE, 9.5, 4, 6.35).withTipMm(4.8).withDepthMm(10));
    bits.put(
        "surfacing", bit(BitShape.SURFACING, 50.8, 12, 12.7).withFlutes(3, FluteForm.STRAIGHT));
    bits.put("point-round-over", bit(BitShape.POINT_ROUND_OVER, 19, 12, 6.35).withRadiusMm(6.35));
  }

  private static void edges(Map<String, BitGeometry> bits) {
    bits.put("trim-tip", bit(BitShape.TRIM, 12.7, 25.4, 6.35).withBearing(TIP, 12.7));
    bits.put("trim-shank", bit(BitShape.TRIM, 19, 25.4, 12.7).withBearing(SHANK, 19));
    bits.put(
        "trim-both",
        bit(BitShape.TRIM, 19, 38, 12.7).withBearing(BOTH, 19).withFlutes(2, FluteForm.SHEAR));
    bits.put(
        "chamfer",
        bit(BitShape.CHAMFER, 34.9, 12.7, 12.7).withAngleDegrees(45).withBearing(TIP, 12.7));
    bits.put("chamfer-no-bearing", bit(BitShape.CHAMFER, 25.4, 12, 6.35).withAngleDegrees(45));
    bits.put(
        "round-over",
        bit(BitShape.ROUND_OVER, 31.75, 13, 12.7).withRadiusMm(9.5).withBearing(TIP, 12.7));
    bits.put(
        "bead",
        bit(BitShape.BEAD, 31.75, 12.7, 12.7)
            .withRadiusMm(9.5)
            .withStepMm(1.6)
            .withBearing(TIP, 9.5));
    bits.put("cove", bit(BitShape.COVE, 28.6, 12.7, 6.35).withRadiusMm(9.5).withBearing(TIP, 9.5));
    bits.put("ogee", bit(BitShape.OGEE, 28.6, 13, 12.7).withRadiusMm(4).withBearing(TIP, 9.5));
    bits.put(
        "reverse-ogee",
        bit(BitShape.REVERSE_OGEE, 28.6, 13, 12.7).withRadiusMm(4).withBearing(TIP, 12.7));
    bits.put(
        "rabbet", bit(BitShape.RABBET, 31.75, 12.7, 12.7).withBearing(TIP, 12.7).withDepthMm(9.5));
    bits.put("slot", bit(BitShape.SLOT, 47.6, 6.35, 12.7).withBearing(TIP, 22.2));
    bits.put(
        "thumbnail",
        bit(BitShape.THUMBNAIL, 38, 12, 12.7)
            .withRadiusMm(15)
            .withStepMm(2)
            .withBearing(TIP, 12.7));
    bits.put(
        "finger-pull",
        bit(BitShape.FINGER_PULL, 38, 22, 12.7).withRadiusMm(8).withBearing(TIP, 16));
    bits.put(
        "bull-nose", bit(BitShape.BULL_NOSE, 34, 22, 12.7).withRadiusMm(9.5).withBearing(TIP, 15));
  }

  private static void joinery(Map<String, BitGeometry> bits) {
    bits.put(
        "panel-bevel",
        bit(BitShape.PANEL_BEVEL, 86, 14, 12.7)
            .withAngleDegrees(70)
            .withDepthMm(36)
            .withBearing(TIP, 14));
    bits.put(
        "panel-cove",
        bit(BitShape.PANEL_COVE, 86, 14, 12.7)
            .withRadiusMm(40)
            .withDepthMm(36)
            .withBearing(TIP, 14));
    bits.put("lock-mitre", bit(BitShape.LOCK_MITRE, 70, 22, 12.7).withAngleDegrees(45));
    bits.put(
        "finger-joint", bit(BitShape.FINGER_JOINT, 44, 36, 12.7).withDepthMm(10).withStepMm(8));
    bits.put(
        "tongue-and-groove",
        bit(BitShape.TONGUE_AND_GROOVE, 41, 20, 12.7).withDepthMm(9).withTipMm(6.35));
  }
}
