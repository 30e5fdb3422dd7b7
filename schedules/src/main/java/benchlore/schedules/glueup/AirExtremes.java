package benchlore.schedules.glueup;

import benchlore.schedules.quantity.Numeric;
import benchlore.schedules.room.Climate;
import benchlore.schedules.time.Moment;

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
}
