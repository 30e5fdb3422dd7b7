package benchlore.schedules.glueup;

import benchlore.schedules.quantity.Numeric;
import benchlore.schedules.room.Climate;
import benchlore.schedules.time.Moment;
import java.util.OptionalDouble;

/** The coldest and warmest air over a stretch of time, looked at every ten minutes. */
final class AirExtremes {
  private static final int STEP_SECOND = 600;
  private static final int DAY_SECOND = 86_400;

  private AirExtremes() {}

  /** Lowest temperature from a moment on for so long; beyond a usual day it repeats. */
  static double coldestCelsius(Climate climate, Moment from, double seconds) {
    double stretch = Math.min(seconds, climate.secondsUntilUsual(from) + DAY_SECOND);
    double coldest = climate.at(from).celsius();
    for (int at = STEP_SECOND; at < stretch; at += STEP_SECOND) {
      coldest = Math.min(coldest, climate.at(from, at).celsius());
    }
    Moment end = from.plusSeconds(Numeric.ceil(stretch));
    return Math.min(coldest, climate.at(end).celsius());
  }

  /** Seconds until the air is first below a temperature; empty if it never is in that time. */
  static OptionalDouble firstBelow(Climate climate, Moment from, double seconds, double celsius) {
    double stretch = Math.min(seconds, climate.secondsUntilUsual(from) + DAY_SECOND);
    for (int at = 0; at < stretch; at += STEP_SECOND) {
      if (climate.at(from, at).celsius() < celsius) {
        return OptionalDouble.of(at);
      }
    }
    return OptionalDouble.empty();
  }

  /** Highest temperature from a moment on for so long, a day at most. */
  static double warmestCelsius(Climate climate, Moment from, double seconds) {
    double stretch = Math.min(seconds, DAY_SECOND);
    double warmest = climate.at(from).celsius();
    for (int at = STEP_SECOND; at < stretch; at += STEP_SECOND) {
      warmest = Math.max(warmest, climate.at(from, at).celsius());
    }
    return Math.max(warmest, climate.at(from.plusSeconds(Numeric.ceil(stretch))).celsius());
  }
}
