package benchlore.generator.drawing.bit;

/** How the cutting edges of a router bit run along its axis. */
public enum FluteForm {
  /** Parallel to the axis. */
  STRAIGHT("straight"),
  /** A right-hand helix that lifts chips towards the router. */
  UPCUT("upcut"),
  /** A left-hand helix that presses chips away from the router. */
  DOWNCUT("downcut"),
  /** Upcut near the tip, downcut above it. */
  COMPRESSION("compression"),
  /** Straight, but leaning a few degrees to slice. */
  SHEAR("shear");

  private final String word;

  FluteForm(String word) {
    this.word = word;
  }

  /** The word used in records. */
  public String word() {
    return word;
  }
}
