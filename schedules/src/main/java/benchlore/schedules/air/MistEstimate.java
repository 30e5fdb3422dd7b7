package benchlore.schedules.air;

/**
 * Where sprayed solids go. A brush leaves all of it on the work and none in the air.
 *
 * @param landedKilogram on the work
 * @param mistKilogram past the work: air, floor, filters and lungs
 * @param peakKilogramPerCubicMetre highest in the room's air if none of the mist settles
 * @param peakIndex that over 5 mg/m3, the US legal limit for fine dust not otherwise regulated;
 *     many finishes deserve less
 * @param clearSecond after spraying, until the air is down to that limit
 */
public record MistEstimate(
    double landedKilogram,
    double mistKilogram,
    double peakKilogramPerCubicMetre,
    double peakIndex,
    double clearSecond) {}
