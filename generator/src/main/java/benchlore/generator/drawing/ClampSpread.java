package benchlore.generator.drawing;

/**
 * A row of clamps on a glue-up: pressure spreads from each pad at 45 degrees.
 *
 * @param padMm width of a clamp's pad, more than 0
 * @param throughMm wood (and caul) between pad and glue line, more than 0
 * @param spacingMm from one clamp to the next, more than 0
 */
public record ClampSpread(double padMm, double throughMm, double spacingMm) {
  /** Refuses a measure that is not more than 0. */
  public ClampSpread {
    check("padMm", padMm);
    check("throughMm", throughMm);
    check("spacingMm", spacingMm);
  }

  private static void check(String name, double value) {
    if (!(value > 0) || !Double.isFinite(value)) {
      throw new IllegalArgumentException(name + " must be more than 0, is " + value);
    }
  }

  /** Length of glue line that one clamp presses. */
  double coveredMm() {
    return padMm + 2 * throughMm;
  }

  /** What two clamps leave unpressed between them; 0 if their cones meet. */
  double gapMm() {
    return Math.max(0, spacingMm - coveredMm());
  }
}
