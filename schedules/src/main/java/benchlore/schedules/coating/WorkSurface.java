package benchlore.schedules.coating;

import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;
import benchlore.schedules.room.Climate;
import benchlore.schedules.time.Moment;

/**
 * The temperature of the work's surface, and how far it stands above the dew point.
 *
 * <pre>
 * surface = the colder of the air now and the air an hour ago
 * margin  = surface - dew point of the air now;  sound at 3 C or more
 * </pre>
 *
 * <p>Wood follows the air slowly: a 20 mm board at 650 kg/m3 and 1600 J/(kg K), warmed through both
 * faces at about 8 W/(m2 K), has a time constant of 22 minutes, lying on a bench about twice that;
 * one hour is the safe side. The 3 C rule: coating inspection practice (ISO 8502-4 guidance).
 */
final class WorkSurface {
  /** How long the surface lags behind the air, seconds. */
  static final SourcedRange LAG =
      SourcedRange.of(3600, Unit.SECOND, Provenance.fromMemory("heat balance of a 20 mm board"));

  /** Least sound margin above the dew point. */
  static final SourcedRange MARGIN =
      SourcedRange.of(
          3,
          Unit.CELSIUS_DIFFERENCE,
          Provenance.source("Coating-maker ambient application conditions sheet", "3 C rule"));

  private WorkSurface() {}

  static double celsius(Climate climate, Moment moment) {
    return celsius(climate, moment, climate.at(moment));
  }

  /** The same where the air of that moment is at hand. */
  static double celsius(Climate climate, Moment moment, Climate.Reading air) {
    return Math.min(climate.at(moment, -3600).celsius(), air.celsius());
  }

  static double marginCelsius(Climate climate, Moment moment) {
    Climate.Reading air = climate.at(moment);
    return celsius(climate, moment, air) - air.dewPointCelsius();
  }
}
