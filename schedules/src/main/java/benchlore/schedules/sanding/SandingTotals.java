package benchlore.schedules.sanding;

/**
 * Sums over a schedule.
 *
 * @param seconds hands-on time of everything, waits left out
 * @param faceSeconds hands-on time of the passes to the final grade alone
 * @param discs discs, sheets and belts of everything
 * @param removedMicron material off the face, old film included
 * @param dustKilogram dust made, between-coat dust included
 */
public record SandingTotals(
    double seconds, double faceSeconds, int discs, double removedMicron, double dustKilogram) {}
