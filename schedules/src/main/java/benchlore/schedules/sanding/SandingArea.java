package benchlore.schedules.sanding;

/**
 * How much is sanded.
 *
 * @param totalSquareMetre all faces, edges and ends, 0.0001 to 1000
 * @param endGrainSquareMetre the end grain among it, 0 to the total
 */
public record SandingArea(double totalSquareMetre, double endGrainSquareMetre) {}
