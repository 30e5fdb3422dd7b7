package benchlore.schedules.air;

import java.util.OptionalDouble;

/**
 * Where the sanding dust goes and what the air holds.
 *
 * @param capturedKilogram caught at the tool
 * @param settledKilogram falls to the floor and the work
 * @param airborneKilogram stays in the air, kg
 * @param peakKilogramPerCubicMetre highest in the room's air, at the end of sanding
 * @param eightHourKilogramPerCubicMetre average over the 8 hours from the start
 * @param governing the lowest limit that applies
 * @param peakIndex highest / that limit
 * @param eightHourIndex average / that limit
 * @param flowNeeded outdoor air that keeps the 8-hour average at the limit, m3/s, mixing included
 * @param clearSecond after the end of sanding, until the air is down to the limit; empty if that
 *     takes over 60 days
 * @param respirator what to wear while sanding and until then
 */
public record DustSchedule(
    double capturedKilogram,
    double settledKilogram,
    double airborneKilogram,
    double peakKilogramPerCubicMetre,
    double eightHourKilogramPerCubicMetre,
    DustLimit governing,
    double peakIndex,
    double eightHourIndex,
    double flowNeeded,
    OptionalDouble clearSecond,
    RespiratorAdvice respirator) {}
