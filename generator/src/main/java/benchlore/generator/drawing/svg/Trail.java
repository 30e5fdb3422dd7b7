package benchlore.generator.drawing.svg;

/** Path data of straight lines, in page units. */
public final class Trail {
  private final StringBuilder d = new StringBuilder("M");

  /** Starts at a place. */
  public Trail(double x, double y) {
    d.append(Svg.pair(x, y));
  }

  /** Goes on straight. */
  public Trail to(double x, double y) {
    d.append('L').append(Svg.pair(x, y));
    return this;
  }

  /** The path, left open. */
  public String open() {
    return d.toString();
  }

  /** The path, closed. */
  public String closed() {
    return d + "Z";
  }
}
