package benchlore.generator.planning;

import benchlore.generator.content.WrittenUnits;

/** A figure a maker writes in a plan: {@code 900 mm}, in the engine's unit. */
final class Amount {
  private Amount() {}

  /** Reads a figure whose form the schema has checked. */
  static double of(String text) {
    int space = text.indexOf(' ');
    double number = Double.parseDouble(text.substring(0, space));
    return number * WrittenUnits.factor(text.substring(space + 1));
  }
}
