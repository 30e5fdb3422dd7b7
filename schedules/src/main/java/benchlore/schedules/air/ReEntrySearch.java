package benchlore.schedules.air;

import java.util.List;
import java.util.OptionalDouble;

/**
 * Finds when the air is fine again after a coat: the last moment before the next coat at which it
 * is not. After the last coat the search ends where even everything still in the film, let go at
 * once, could not lift the air above the threshold again.
 */
final class ReEntrySearch {
  static final double LONGEST_SECOND = 60 * 86_400.0;
  private static final int HALVINGS = 32;

  private ReEntrySearch() {}

  /**
   * Seconds after the coat's start from which the scale stays at or below the threshold until the
   * next coat is begun.
   *
   * @param exposure the room
   * @param scale what to look at
   * @param threshold the value to keep to
   * @param startSecond when this coat is begun
   * @return empty if the next coat comes first, or after 60 days
   */
  static OptionalDouble secondsAfter(
      Exposure exposure, LimitScale scale, double threshold, double startSecond) {
    if (exposure.ceiling(scale, startSecond) <= threshold) {
      return OptionalDouble.of(0);
    }
    OptionalDouble end = end(exposure, scale, threshold, startSecond);
    if (end.isEmpty()) {
      return end;
    }
    List<Double> grid = TimeGrid.between(startSecond, end.getAsDouble(), exposure.breaks());
    int last = grid.size() - 1;
    while (last >= 0 && exposure.at(scale, grid.get(last)) <= threshold) {
      last--;
    }
    if (last == grid.size() - 1) {
      return OptionalDouble.empty();
    }
    if (last < 0) {
      return OptionalDouble.of(0);
    }
    double over = grid.get(last);
    double fine = grid.get(last + 1);
    return OptionalDouble.of(crossing(exposure, scale, threshold, over, fine) - startSecond);
  }

  private static double crossing(
      Exposure exposure, LimitScale scale, double threshold, double overSecond, double fineSecond) {
    double over = overSecond;
    double fine = fineSecond;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = 0.5 * (over + fine);
      if (exposure.at(scale, middle) <= threshold) {
        fine = middle;
      } else {
        over = middle;
      }
    }
    return fine;
  }

  private static OptionalDouble end(
      Exposure exposure, LimitScale scale, double threshold, double startSecond) {
    for (Exposure.Coat coat : exposure.coats()) {
      if (coat.startSecond() > startSecond) {
        return OptionalDouble.of(coat.startSecond());
      }
    }
    double from = exposure.lastQuickEndSecond();
    for (double ahead = 60; ahead <= LONGEST_SECOND; ahead = ahead * 2) {
      if (exposure.ceiling(scale, from + ahead) <= threshold) {
        return OptionalDouble.of(from + ahead);
      }
    }
    return OptionalDouble.empty();
  }
}
