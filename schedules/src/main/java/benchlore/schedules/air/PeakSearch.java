package benchlore.schedules.air;

import java.util.List;

/** Finds the highest point: the best moment of a grid, then narrowed between its neighbours. */
final class PeakSearch {
  private static final int NARROWINGS = 32;

  private PeakSearch() {}

  static AirSchedule.Peak highest(Exposure exposure, Scale scale, double untilSecond) {
    List<Double> grid = TimeGrid.between(0, untilSecond, exposure.breaks());
    int best = 0;
    double highest = exposure.at(scale, grid.get(0));
    for (int i = 1; i < grid.size(); i++) {
      double value = exposure.at(scale, grid.get(i));
      if (value > highest) {
        best = i;
        highest = value;
      }
    }
    double low = grid.get(Math.max(0, best - 1));
    double high = grid.get(Math.min(grid.size() - 1, best + 1));
    for (int i = 0; i < NARROWINGS; i++) {
      double third = (high - low) / 3;
      if (exposure.at(scale, low + third) < exposure.at(scale, high - third)) {
        low = low + third;
      } else {
        high = high - third;
      }
    }
    double middle = 0.5 * (low + high);
    double refined = exposure.at(scale, middle);
    return refined > highest
        ? new AirSchedule.Peak(middle, refined)
        : new AirSchedule.Peak(grid.get(best), highest);
  }
}
