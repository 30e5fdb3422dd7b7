package benchlore.schedules.sanding;

/**
 * The light sanding between coats.
 *
 * @param each one such pass
 * @param times how often: one less than the coats
 */
public record BetweenCoats(SandingPass each, int times) {}
