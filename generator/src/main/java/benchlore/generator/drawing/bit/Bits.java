package benchlore.generator.drawing.bit;

import java.util.List;
import java.util.Objects;

/**
 * Draws router bits and what they cut.
 *
 * <p>Titles name the drawing; an {@code idPrefix} starts every id in it: a letter, then letters,
 * digits, - or _, unique on the page. Every method refuses a geometry with {@link
 * BitGeometry#problems} by an {@link IllegalArgumentException}.
 */
public final class Bits {
  private Bits() {}

  /** A bit from the side with its dimensions. */
  public static String bit(BitGeometry geometry, String title, String idPrefix) {
    return BitDrawing.draw(checked(geometry), title, idPrefix);
  }

  /** The section a bit leaves in the work, and a plan of the feed. */
  public static String cut(BitGeometry geometry, String title, String idPrefix) {
    return CutDrawing.draw(checked(geometry), title, idPrefix);
  }

  /** A bit's silhouette on 48 by 48 units, to stand beside its name; hidden from screen readers. */
  public static String glyph(BitGeometry geometry) {
    return GlyphDrawing.draw(checked(geometry));
  }

  /** The end of a board whose edge this bit has cut, five units a millimetre. */
  public static String edgeCut(BitGeometry geometry, String title, String idPrefix) {
    return EdgeDrawing.cut(checked(geometry), title, idPrefix);
  }

  /**
   * The end of a board with an edge worked without a profile bit, at the same scale.
   *
   * @param sizeMm what is cut, 0 to 15
   * @throws IllegalArgumentException if the size is outside its range
   */
  public static String edge(EdgeShape shape, double sizeMm, String title, String idPrefix) {
    if (!(sizeMm >= 0 && sizeMm <= 15)) {
      throw new IllegalArgumentException("sizeMm must be 0 to 15, is " + sizeMm);
    }
    return EdgeDrawing.shape(Objects.requireNonNull(shape, "shape"), sizeMm, title, idPrefix);
  }

  private static BitGeometry checked(BitGeometry geometry) {
    List<String> problems = BitGeometry.problems(Objects.requireNonNull(geometry, "geometry"));
    if (!problems.isEmpty()) {
      throw new IllegalArgumentException(String.join("; ", problems));
    }
    return geometry;
  }
}
