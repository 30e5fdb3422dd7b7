package benchlore.generator.drawing.surface;

/**
 * A film whose sheen is to be shown.
 *
 * @param lowGu least gloss units at 60 degrees
 * @param highGu most gloss units at 60 degrees, 100 for black glass
 * @param rubbed whether its scratches all run along the grain
 */
public record SheenSwatch(double lowGu, double highGu, boolean rubbed) {
  /** Refuses figures off the scale. */
  public SheenSwatch {
    if (!(lowGu >= 0 && highGu <= 100 && lowGu <= highGu)) {
      throw new IllegalArgumentException(
          "lowGu and highGu must run from 0 to 100, are " + lowGu + " and " + highGu);
    }
  }

  /** The reading that is drawn. */
  double middleGu() {
    return (lowGu + highGu) / 2;
  }
}
