package benchlore.schedules.coating;

import benchlore.schedules.material.DryingMechanism;
import benchlore.schedules.material.Finish;
import benchlore.schedules.material.FinishFamily;
import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;

/**
 * Blushing: fast solvents chill the film as they leave; where it falls to the dew point, water
 * settles in the film and turns it milky.
 *
 * <pre>
 * at risk when surface - dew point &lt; chill
 * </pre>
 *
 * <p>The chill is taken so that the trade's limit for fast-drying finishes, about 70 % relative
 * humidity, comes out at 20 deg C: the dew point is then 5.6 C below the air.
 */
final class Blush {
  /** How far fast solvents chill the film. */
  static final SourcedRange CHILL =
      SourcedRange.of(
          5.6,
          Unit.CELSIUS_DIFFERENCE,
          Provenance.commonPractice("fast-drying finishes up to about 70 % relative humidity"));

  private static final double NEVER = -100;

  private Blush() {}

  /** The chill to reckon with; below every margin for finishes that don't blush. */
  static double chillCelsius(Finish finish) {
    boolean evaporates = finish.dryingMechanism() == DryingMechanism.EVAPORATION;
    return evaporates && blushes(finish.family()) ? CHILL.high() : NEVER;
  }

  private static boolean blushes(FinishFamily family) {
    return switch (family) {
      case SHELLAC,
          WAXED_SHELLAC,
          NITROCELLULOSE_LACQUER,
          CATALYSED_LACQUER,
          SPIRIT_DYE,
          SANDING_SEALER ->
          true;
      case ALKYD_VARNISH,
          OIL_POLYURETHANE,
          SPAR_VARNISH,
          WATERBORNE_ACRYLIC,
          WATERBORNE_POLYURETHANE,
          TWO_PART_POLYURETHANE,
          EPOXY,
          DRYING_OIL,
          OIL_VARNISH_BLEND,
          HARDWAX_OIL,
          WAX,
          OIL_STAIN,
          GEL_STAIN,
          WATER_DYE,
          GRAIN_FILLER,
          PAINT_OIL,
          PAINT_WATERBORNE ->
          false;
    };
  }
}
