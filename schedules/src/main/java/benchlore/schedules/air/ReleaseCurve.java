package benchlore.schedules.air;

/**
 * How a coat gives off its solvent: a share at an even rate while it is put on and flashes off, the
 * rest afterwards at a rate that decays exponentially.
 *
 * @param quickShare share of the solvent in the quick part, 0 to 1
 * @param quickSecond length of the quick part from the start of the coat, 1 to 86 400 s; includes
 *     the time it takes to put the coat on
 * @param decaySecond time constant of the rest, 1 to 1 000 000 s: after it, 37 % of the rest is
 *     left
 */
public record ReleaseCurve(double quickShare, double quickSecond, double decaySecond) {}
