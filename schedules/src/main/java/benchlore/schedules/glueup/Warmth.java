package benchlore.schedules.glueup;

import benchlore.schedules.numeric.Numeric;
import benchlore.schedules.numeric.WallTime;
import benchlore.schedules.room.Climate;
import java.time.LocalDateTime;

/** The coldest and warmest air over a stretch of time, looked at every ten minutes. */
final class Warmth {
  private static final int STEP_SECOND = 600;
  private static final int DAY_SECOND = 86_400;

  private Warmth() {}

  /** Lowest temperature from a moment on for so long; beyond a day it repeats. */
  static double coldestCelsius(Climate climate, LocalDateTime from, double seconds) {
    double coldest = climate.at(from).celsius();
    for (int at = STEP_SECOND; at < stretch(seconds); at += STEP_SECOND) {
      coldest = Math.min(coldest, climate.at(from, at).celsius());
    }
    LocalDateTime end = WallTime.plus(from, Numeric.ceil(stretch(seconds)));
    return Math.min(coldest, climate.at(end).celsius());
  }

  private static double stretch(double seconds) {
    return Math.min(seconds, DAY_SECOND);
  }
}
