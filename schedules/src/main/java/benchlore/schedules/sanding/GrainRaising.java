package benchlore.schedules.sanding;

import benchlore.schedules.quantity.SourcedRange;

/**
 * Wet the bare wood, let it dry, knock off what stood up, before a waterborne coat.
 *
 * @param wetSeconds to wet and wipe off standing water
 * @param drySeconds wait until bone dry; a range
 * @param knockOff the light pass afterwards
 */
public record GrainRaising(double wetSeconds, SourcedRange drySeconds, SandingPass knockOff) {}
