package benchlore.schedules.cutting;

/**
 * A part to be cut free of its sheet. Any number may be given; {@link Cutting#plan(TabsRequest)}
 * refuses figures out of range.
 *
 * @param lengthMetre longer side of the part's outline box, 0.02 to 3
 * @param widthMetre shorter side, 0.005 to 3
 * @param thicknessMetre of the sheet, 0.001 to 0.06
 * @param bitDiameterMetre 0.0005 to 0.0889
 * @param inside true if holes or cut-outs come out of the part too
 */
public record TabsRequest(
    double lengthMetre,
    double widthMetre,
    double thicknessMetre,
    double bitDiameterMetre,
    boolean inside) {}
