package benchlore.generator.drawing.surface;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * Brightness along one axis of a window of two panes, blurred by a bell curve. A window blurred in
 * both directions is the product of two of these.
 *
 * @param from start of the first pane, page units
 * @param to end of the second
 * @param bar width of the bar between
 * @param spread standard deviation of the blur, page units
 */
record BlurredPanes(double from, double to, double bar, double spread) {
  /** Where a stop is set, in standard deviations from an edge. */
  private static final double[] AT = {-2.6, -1.7, -1, -0.5, 0, 0.5, 1, 1.7, 2.6};

  /** As sharp as this is a mirror, and keeps every edge upright. */
  private static final double SHARPEST = 0.15;

  /** A place and the brightness there. */
  record Stop(double at, double light) {}

  double light(double x) {
    double middle = (from + to) / 2;
    return pane(from, middle - bar / 2, x) + pane(middle + bar / 2, to, x);
  }

  private double pane(double a, double b, double x) {
    double s = Math.max(spread, SHARPEST);
    return SheenLobe.below((x - a) / s) - SheenLobe.below((x - b) / s);
  }

  /** Stops between two places, enough to follow the curve. */
  List<Stop> stops(double low, double high) {
    double middle = (from + to) / 2;
    double[] edges = {from, middle - bar / 2, middle + bar / 2, to};
    TreeSet<Double> places = new TreeSet<>(List.of(low, high));
    for (double edge : edges) {
      for (double step : AT) {
        double at = edge + step * Math.max(spread, SHARPEST);
        if (at > low && at < high) {
          places.add(at);
        }
      }
    }
    List<Stop> stops = new ArrayList<>();
    double last = Double.NEGATIVE_INFINITY;
    for (double at : places) {
      boolean apart = at - last > Math.max(spread, SHARPEST) / 4;
      if (apart || at == high) {
        stops.add(new Stop(at, light(at)));
        last = at;
      }
    }
    return stops;
  }
}
