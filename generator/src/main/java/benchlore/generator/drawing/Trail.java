package benchlore.generator.drawing;

/** Path data of straight lines, in page units. */
final class Trail {
  private final StringBuilder d = new StringBuilder("M");

  Trail(double x, double y) {
    d.append(Svg.pair(x, y));
  }

  Trail to(double x, double y) {
    d.append('L').append(Svg.pair(x, y));
    return this;
  }

  String open() {
    return d.toString();
  }

  String closed() {
    return d + "Z";
  }
}
