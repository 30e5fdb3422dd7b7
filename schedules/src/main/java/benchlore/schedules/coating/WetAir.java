package benchlore.schedules.coating;

import benchlore.schedules.quantity.Numeric;
import benchlore.schedules.room.Climate;
import benchlore.schedules.time.Duration;
import benchlore.schedules.time.Moment;
import java.util.ArrayList;
import java.util.List;

/**
 * The air at every ten minutes of a coat's wet hours, as far as one usual day, since every one
 * after it is the same.
 *
 * @param samples in order, the first at the application
 */
record WetAir(List<Sample> samples) {
  /** Seconds between samples. */
  static final int STEP_SECONDS = 600;

  private static final double DAY_SECONDS = 86_400;

  /**
   * Air and surface at one moment.
   *
   * @param moment the moment
   * @param celsius air temperature
   * @param humidityPercent relative humidity
   * @param surfaceCelsius temperature of the work's surface
   * @param marginCelsius surface less dew point
   */
  record Sample(
      Moment moment,
      double celsius,
      double humidityPercent,
      double surfaceCelsius,
      double marginCelsius) {
    static Sample of(Climate climate, Moment moment) {
      Climate.Reading air = climate.at(moment);
      double surface = WorkSurface.celsius(climate, moment, air);
      double margin = surface - air.dewPointCelsius();
      return new Sample(moment, air.celsius(), air.relativeHumidityPercent(), surface, margin);
    }
  }

  static WetAir of(DryingRequest request, Duration longest) {
    double span = span(request, longest);
    List<Sample> samples = new ArrayList<>();
    for (int second = 0; second <= span; second += STEP_SECONDS) {
      samples.add(Sample.of(request.climate(), request.start().plusSeconds(second)));
    }
    return new WetAir(samples);
  }

  /** How far there is anything to look at: as long as the film is wet, and one usual day. */
  static double span(DryingRequest request, Duration wet) {
    double most = request.climate().secondsUntilUsual(request.start()) + DAY_SECONDS;
    return Math.min(most, wet.seconds());
  }

  /** The samples of the first hours. */
  List<Sample> until(Duration wet) {
    double count = Math.floor(wet.seconds() / (double) STEP_SECONDS) + 1;
    return samples.subList(0, Numeric.round(Math.min(count, samples.size())));
  }
}
