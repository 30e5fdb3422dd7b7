package benchlore.generator.drawing;

import java.util.List;
import java.util.Objects;

/**
 * Draws to SVG text, one visual language for all.
 *
 * <p>Every drawing is 320 units wide, carries a title and a description, and is coloured by the
 * classes of {@code drawing.css} alone. Ids start with the prefix given by the caller, which must
 * be unique on the page. The same arguments always give the same text.
 */
public final class Drawings {
  private Drawings() {}

  /**
   * A bit from the side with its dimensions.
   *
   * @param idPrefix a letter, then letters, digits, - or _; unique on the page
   * @throws IllegalArgumentException if the geometry has {@link BitGeometry#problems}
   */
  public static String bit(BitGeometry geometry, String title, String idPrefix) {
    check(geometry);
    return BitDrawing.draw(geometry, title, idPrefix);
  }

  /**
   * The section a bit leaves in the work, and a plan of the feed.
   *
   * @param idPrefix a letter, then letters, digits, - or _; unique on the page
   * @throws IllegalArgumentException if the geometry has {@link BitGeometry#problems}
   */
  public static String cut(BitGeometry geometry, String title, String idPrefix) {
    check(geometry);
    return CutDrawing.draw(geometry, title, idPrefix);
  }

  /**
   * A bit's silhouette on 48 by 48 units, to stand beside its name; hidden from screen readers.
   *
   * @throws IllegalArgumentException if the geometry has {@link BitGeometry#problems}
   */
  public static String glyph(BitGeometry geometry) {
    check(geometry);
    return GlyphDrawing.draw(geometry);
  }

  private static void check(BitGeometry geometry) {
    List<String> problems = BitGeometry.problems(Objects.requireNonNull(geometry, "geometry"));
    if (!problems.isEmpty()) {
      throw new IllegalArgumentException(String.join("; ", problems));
    }
  }
}
