package benchlore.schedules.air;

import java.util.List;

/** Every coat's concentration at every moment of a grid, worked out once for all scales. */
final class ConcentrationSamples {
  private final Exposure exposure;
  private final List<Double> seconds;
  private final double[][] concentrations;

  private ConcentrationSamples(Exposure exposure, List<Double> seconds) {
    this.exposure = exposure;
    this.seconds = seconds;
    this.concentrations = new double[seconds.size()][];
    for (int i = 0; i < concentrations.length; i++) {
      concentrations[i] = exposure.concentrations(seconds.get(i));
    }
  }

  static ConcentrationSamples of(Exposure exposure, double untilSecond) {
    return new ConcentrationSamples(exposure, TimeGrid.between(0, untilSecond, exposure.breaks()));
  }

  int size() {
    return seconds.size();
  }

  double second(int i) {
    return seconds.get(i);
  }

  double value(LimitScale scale, int i) {
    return exposure.weigh(scale, concentrations[i]);
  }

  Exposure exposure() {
    return exposure;
  }
}
