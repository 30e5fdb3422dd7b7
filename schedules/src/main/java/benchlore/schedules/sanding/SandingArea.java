package benchlore.schedules.sanding;

/**
 * How much is sanded.
 *
 * @param totalSquareMetre all faces, edges and ends, 0.0001 to 1000
 * @param endGrainSquareMetre the end grain among it, 0 to the total
 * @param pieces pieces it is spread over, 1 to 10000; each is turned and clamped for every grade
 */
public record SandingArea(double totalSquareMetre, double endGrainSquareMetre, int pieces) {}
