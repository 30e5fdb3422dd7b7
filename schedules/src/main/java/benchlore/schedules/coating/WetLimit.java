package benchlore.schedules.coating;

import benchlore.schedules.material.Finish;
import benchlore.schedules.quantity.Unit;

/** What the air must keep to while a film is wet. */
enum WetLimit {
  /** Minimum temperature of the surface. */
  COLD,
  /** Maximum temperature of the air. */
  HOT,
  /** Maximum relative humidity. */
  DAMP,
  /** Minimum relative humidity (moisture cure). */
  DRY,
  /** Margin of the surface above the dew point. */
  DEW,
  /** Margin of a surface chilled by fast solvents. */
  BLUSH;

  /** The air's figure this limit looks at. */
  double figure(WetAir.Sample air) {
    return switch (this) {
      case COLD -> air.surfaceCelsius();
      case HOT -> air.celsius();
      case DAMP, DRY -> air.humidityPercent();
      case DEW, BLUSH -> air.marginCelsius();
    };
  }

  /** The bound for that figure: the safer end of what the finish states. */
  double bound(Finish finish) {
    return switch (this) {
      case COLD -> finish.air().minimumTemperature().high();
      case HOT -> finish.air().maximumTemperature().low();
      case DAMP -> finish.air().maximumHumidity().low();
      case DRY -> finish.air().minimumHumidity().map(d -> d.high()).orElse(0.0);
      case DEW -> WorkSurface.MARGIN.high();
      case BLUSH -> Blush.chillCelsius(finish);
    };
  }

  /** By how much the figure is on the wrong side of the bound; 0 or less is sound. */
  double excess(double figure, double bound) {
    return switch (this) {
      case HOT, DAMP -> figure - bound;
      case COLD, DRY, DEW, BLUSH -> bound - figure;
    };
  }

  /** Whether no coat may go on past it; blush can be met with slow thinner, so that only warns. */
  boolean gates() {
    return this != BLUSH;
  }

  /** Whether the figure breaks the bound; a rounding error does not. */
  boolean isPassed(double figure, double bound) {
    return excess(figure, bound) > 1e-6;
  }

  Unit unit() {
    return switch (this) {
      case COLD, HOT -> Unit.CELSIUS;
      case DAMP, DRY -> Unit.PERCENT;
      case DEW, BLUSH -> Unit.CELSIUS_DIFFERENCE;
    };
  }
}
