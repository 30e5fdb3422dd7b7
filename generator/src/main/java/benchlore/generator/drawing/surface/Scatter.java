package benchlore.generator.drawing.surface;

/** A fixed run of numbers that looks random: a linear congruence, always alike. */
final class Scatter {
  private long state;

  Scatter(long seed) {
    this.state = seed;
  }

  /** A number from -1 to 1. */
  double next() {
    state = (state * 1_103_515_245L + 12_345L) & 0x7fffffffL;
    return state / (double) 0x40000000L - 1;
  }

  /** A number between two. */
  double between(double low, double high) {
    return low + (next() + 1) / 2 * (high - low);
  }
}
