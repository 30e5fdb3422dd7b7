package benchlore.schedules.air;

import java.util.ArrayList;
import java.util.List;

/** Moments to look at: every break, and between breaks enough of them, densest after a break. */
final class TimeGrid {
  private static final int STEPS = 32;

  private TimeGrid() {}

  /** Moments from {@code fromSecond} to {@code toSecond}, both included, rising. */
  static List<Double> between(double fromSecond, double toSecond, List<Double> breaks) {
    List<Double> grid = new ArrayList<>();
    grid.add(fromSecond);
    for (double at : breaks) {
      if (at > fromSecond && at < toSecond) {
        addStretch(grid, at);
      }
    }
    addStretch(grid, toSecond);
    return grid;
  }

  private static void addStretch(List<Double> grid, double toSecond) {
    double from = grid.get(grid.size() - 1);
    double length = toSecond - from;
    if (!(length > 0)) {
      return;
    }
    for (int i = 1; i < STEPS; i++) {
      double share = (double) i / STEPS;
      grid.add(from + length * share * share);
    }
    grid.add(toSecond);
  }
}
