package benchlore.schedules.coating;

import benchlore.schedules.numeric.WallTime;
import benchlore.schedules.room.Climate;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;

/**
 * The air at every ten minutes of a coat's wet hours, one day at most since every day is the same.
 *
 * @param samples in order, the first at the application
 */
record WetAir(List<Sample> samples) {
  /** Seconds between samples. */
  static final int STEP_SECONDS = 600;

  private static final long DAY_SECONDS = 86_400;

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
      LocalDateTime moment,
      double celsius,
      double humidityPercent,
      double surfaceCelsius,
      double marginCelsius) {}

  static WetAir of(DryingRequest request, Duration longest) {
    long span = Math.min(DAY_SECONDS, longest.getSeconds());
    List<Sample> samples = new ArrayList<>();
    for (long second = 0; second <= span; second += STEP_SECONDS) {
      LocalDateTime moment = WallTime.plus(request.start(), second);
      Climate.Reading air = request.climate().at(moment);
      double surface = WorkSurface.celsius(request.climate(), moment);
      double margin = surface - air.dewPointCelsius();
      samples.add(
          new Sample(moment, air.celsius(), air.relativeHumidityPercent(), surface, margin));
    }
    return new WetAir(samples);
  }

  /** The samples of the first hours. */
  List<Sample> until(Duration wet) {
    long span = Math.min(DAY_SECONDS, wet.getSeconds());
    int count = Math.toIntExact(span / STEP_SECONDS) + 1;
    return samples.subList(0, Math.min(count, samples.size()));
  }
}
