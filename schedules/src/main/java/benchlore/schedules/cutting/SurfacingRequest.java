package benchlore.schedules.cutting;

/**
 * A spoilboard or slab to be flattened. Any number may be given; {@link
 * Cutting#plan(SurfacingRequest)} refuses figures out of range.
 *
 * @param lengthMetre along the strokes, 0.05 to 4
 * @param acrossMetre across the strokes, 0.05 to 4
 * @param bitDiameterMetre 0.003 to 0.0889
 * @param overlapPercent of the diameter each stroke repeats of the one before, 5 to 90
 * @param removeMetre whole depth to take off, 0.0001 to 0.02
 * @param passMetre most in one layer, 0.0001 to 0.005
 * @param feedMetrePerSecond 0.001 to 2
 */
public record SurfacingRequest(
    double lengthMetre,
    double acrossMetre,
    double bitDiameterMetre,
    double overlapPercent,
    double removeMetre,
    double passMetre,
    double feedMetrePerSecond) {}
