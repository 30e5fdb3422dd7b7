package benchlore.schedules.sanding;

/**
 * The grade of a scale whose grain comes nearest to a size.
 *
 * @param grit the nearest grade, by ratio of grain sizes
 * @param ratio its grain size over the size asked for; 1 is a perfect match, above 1 is coarser
 */
public record GritMatch(Grit grit, double ratio) {}
