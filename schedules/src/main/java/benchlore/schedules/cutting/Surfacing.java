package benchlore.schedules.cutting;

/**
 * How a surface is flattened.
 *
 * @param strokes in each layer
 * @param stepMetre from stroke to stroke, never above diameter x (1 - overlap); 0 for one stroke
 * @param layers how many depths
 * @param layerMetre depth of each, never above what was asked
 * @param pathMetre whole path of the bit's centre over all layers
 * @param seconds at the feed given, without lifting and returning
 * @param highestRpm never turn the bit faster (chart; its marking wins if lower)
 */
public record Surfacing(
    int strokes,
    double stepMetre,
    int layers,
    double layerMetre,
    double pathMetre,
    double seconds,
    double highestRpm) {}
