package benchlore.generator.drawing.surface;

import java.util.Objects;

/**
 * Draws what a surface looks like: a board's growth rings, the grains of an abrasive, the light in
 * a film.
 *
 * <p>Titles name the drawing; an {@code idPrefix} starts every id in it: a letter, then letters,
 * digits, - or _, unique on the page.
 */
public final class Surfaces {
  private Surfaces() {}

  /** End and face of a board with its growth rings. */
  public static String board(BoardCut cut, String title, String idPrefix) {
    return GrainDrawing.draw(Objects.requireNonNull(cut, "cut"), title, idPrefix);
  }

  /**
   * Abrasive grains drawn to scale.
   *
   * @param micron mean grain size, 1 to 5000
   * @throws IllegalArgumentException if it is outside that range
   */
  public static String grit(double micron, String title, String idPrefix) {
    if (!(micron >= 1 && micron <= 5000)) {
      throw new IllegalArgumentException("micron must be 1 to 5000, is " + micron);
    }
    return GritDrawing.draw(micron, title, idPrefix);
  }

  /** A window mirrored in a film of this sheen, over a scale. */
  public static String sheen(SheenSwatch swatch, String title, String idPrefix) {
    return SheenDrawing.draw(Objects.requireNonNull(swatch, "swatch"), title, idPrefix);
  }

  /** The same without the scale, to stand beside others. */
  public static String sheenPatch(SheenSwatch swatch, String title, String idPrefix) {
    return SheenDrawing.patch(Objects.requireNonNull(swatch, "swatch"), title, idPrefix);
  }
}
