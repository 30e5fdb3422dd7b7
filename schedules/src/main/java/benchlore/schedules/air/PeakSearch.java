package benchlore.schedules.air;

/** Finds the highest point: the best moment of a grid, then narrowed between its neighbours. */
final class PeakSearch {
  // Each leaves two thirds: a ten-millionth of the stretch is left, for a peak may be a sharp
  // corner.
  private static final int NARROWINGS = 40;

  private PeakSearch() {}

  static AirSchedule.Peak highest(Samples samples, Scale scale) {
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

  private static double narrowed(Exposure exposure, Scale scale, double from, double to) {
    double low = from;
    double high = to;
    for (int i = 0; i < NARROWINGS; i++) {
      double third = (high - low) / 3;
      if (exposure.at(scale, low + third) < exposure.at(scale, high - third)) {
        low = low + third;
      } else {
        high = high - third;
      }
    }
    return 0.5 * low + 0.5 * high;
  }
}
