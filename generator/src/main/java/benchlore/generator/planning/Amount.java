package benchlore.generator.planning;

/** A figure a maker writes in a plan: {@code 900 mm}, in the engine's unit. */
final class Amount {
  private Amount() {}

  /** Reads a figure whose form the schema has checked. */
  static double of(String text) {
    return benchlore.schedules.present.Amount.find(text).orElseThrow().value();
  }
}
