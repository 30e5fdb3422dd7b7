package benchlore.schedules.material;

import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.SourcedRange;

/**
 * Classes of wood by density at about 12 % moisture. The limits are ours, set so that the woods the
 * glue-maker guides name fall where they put them: pines low; cherry and soft maple medium; oak and
 * birch high.
 */
public enum DensityClass {
  /** Below 500 kg/m3: most softwoods, poplars, limes. */
  LOW(0),
  /** 500 to below 650 kg/m3: cherry, soft maple, walnut. */
  MEDIUM(500),
  /** From 650 kg/m3: oak, birch, ash, hard maple. */
  HIGH(650);

  /** Where the limits come from. */
  public static final Provenance FROM =
      Provenance.commonPractice("limits set from the woods glue-maker guides name in each class");

  private final double fromInclusive;

  DensityClass(double fromInclusive) {
    this.fromInclusive = fromInclusive;
  }

  /** The class of a density, kg/m3. */
  public static DensityClass of(double kilogramPerCubicMetre) {
    DensityClass found = LOW;
    for (DensityClass each : values()) {
      if (kilogramPerCubicMetre >= each.fromInclusive) {
        found = each;
      }
    }
    return found;
  }

  /** The adhesive's pressure for this class. */
  public SourcedRange pressureOf(Adhesive adhesive) {
    return switch (this) {
      case LOW -> adhesive.line().pressureSoftwood();
      case MEDIUM -> adhesive.line().pressureMedium();
      case HIGH -> adhesive.line().pressureHardwood();
    };
  }
}
