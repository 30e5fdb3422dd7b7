package benchlore.schedules.air;

/** Finds the highest point: the best moment of a grid, then narrowed between its neighbours. */
final class PeakSearch {
  // The golden section of a stretch; 34 of them leave a ten-millionth, for a peak may be a corner.
  private static final double SECTION = 0.618033988749895;
  private static final int NARROWINGS = 34;

  private PeakSearch() {}

  static AirSchedule.Peak highest(ConcentrationSamples samples, LimitScale scale) {
    int best = 0;
    double highest = samples.value(scale, 0);
    for (int i = 1; i < samples.size(); i++) {
      double value = samples.value(scale, i);
      if (value > highest) {
        best = i;
        highest = value;
      }
    }
    double low = samples.second(Math.max(0, best - 1));
    double high = samples.second(Math.min(samples.size() - 1, best + 1));
    double middle = narrowed(samples.exposure(), scale, low, high);
    double refined = samples.exposure().at(scale, middle);
    return refined > highest
        ? new AirSchedule.Peak(middle, refined)
        : new AirSchedule.Peak(samples.second(best), highest);
  }

  private static double narrowed(Exposure exposure, LimitScale scale, double from, double to) {
    double low = from;
    double high = to;
    double left = high - SECTION * (high - low);
    double right = low + SECTION * (high - low);
    double atLeft = exposure.at(scale, left);
    double atRight = exposure.at(scale, right);
    for (int i = 0; i < NARROWINGS; i++) {
      if (atLeft < atRight) {
        low = left;
        left = right;
        atLeft = atRight;
        right = low + SECTION * (high - low);
        atRight = exposure.at(scale, right);
      } else {
        high = right;
        right = left;
        atRight = atLeft;
        left = high - SECTION * (high - low);
        atLeft = exposure.at(scale, left);
      }
    }
    return 0.5 * low + 0.5 * high;
  }
}
