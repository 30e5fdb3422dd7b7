package benchlore.schedules.sanding;

/**
 * The finishing pass of a router with a ball-nose bit.
 *
 * @param ballDiameterMetre 0.0005 to 0.1
 * @param feedMetrePerSecond feed along the lines, 0.0005 to 1
 * @param finestStepoverMetre the finest stepover to consider, 0.00001 to the diameter
 * @param coarsestStepoverMetre the coarsest to consider, above the finest, at most the diameter
 * @param machineWeight how much a machine minute counts against a minute of sanding, 0 to 10: 1 if
 *     you stand by, less if you do other work meanwhile
 */
public record MillingPass(
    double ballDiameterMetre,
    double feedMetrePerSecond,
    double finestStepoverMetre,
    double coarsestStepoverMetre,
    double machineWeight) {}
