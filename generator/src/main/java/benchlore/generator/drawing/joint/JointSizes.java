package benchlore.generator.drawing.joint;

import benchlore.generator.drawing.svg.Measure;
import benchlore.generator.drawing.svg.Num;
import java.util.Map;

/**
 * The rules of thumb a joint is drawn by, by name: {@code thickness-share} and {@code lap-share} as
 * fractions of the board's thickness, {@code slope} as length for 1, {@code angle} in degrees,
 * {@code depth}, {@code length}, {@code thickness} and {@code gap} in millimetres.
 *
 * @param sizes low and high of each
 */
public record JointSizes(Map<String, Size> sizes) {
  /**
   * One figure.
   *
   * @param low its low end
   * @param high its high end, the same where it is no range
   */
  public record Size(double low, double high) {
    double middle() {
      return (low + high) / 2;
    }
  }

  /** Copies the map. */
  public JointSizes {
    sizes = Map.copyOf(sizes);
  }

  Size of(String name) {
    Size size = sizes.get(name);
    if (size == null) {
      throw new IllegalArgumentException("this joint is drawn by its " + name);
    }
    return size;
  }

  double middle(String name) {
    return of(name).middle();
  }

  /** A fraction of the thickness as the shop says it. */
  Measure share(String name) {
    Size size = of(name);
    String low = fraction(size.low());
    String high = fraction(size.high());
    return Measure.words(low.equals(high) ? low + " t" : low + " to " + high + " t");
  }

  /** Millimetres: one figure, or a range in words. */
  Measure mm(String name) {
    Size size = of(name);
    return size.low() == size.high()
        ? Measure.mm(size.low())
        : Measure.words(Num.of(size.low()) + "–" + Num.of(size.high()) + " mm");
  }

  /** A slope as one in so many. */
  Measure slope() {
    Size size = of("slope");
    String low = Num.of(size.low());
    return Measure.words(
        "1 : " + (size.low() == size.high() ? low : low + "–" + Num.of(size.high())));
  }

  private static String fraction(double share) {
    for (int below = 1; below <= 5; below++) {
      for (int above = 1; above <= below; above++) {
        if (Math.abs(share - (double) above / below) < 0.02) {
          return below == 1 ? "1" : above + "/" + below;
        }
      }
    }
    return Num.of(share);
  }
}
