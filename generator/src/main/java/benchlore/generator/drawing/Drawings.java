package benchlore.generator.drawing;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Draws to SVG text, one visual language for all.
 *
 * <p>Every drawing but the small ones is 320 units wide, carries a title and a description, and is
 * coloured by the classes of {@code drawing.css} alone. Ids start with the prefix given by the
 * caller, which must be unique on the page. The same arguments always give the same text.
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

  /** A tool to scale, with what to look at; {@code idPrefix} as above. */
  public static String tool(Silhouette tool, String title, String idPrefix) {
    return SilhouetteDrawing.draw(Objects.requireNonNull(tool, "tool"), title, idPrefix);
  }

  /** A tool's silhouette on 48 by 48 units, to stand beside its name. */
  public static String glyph(Silhouette tool) {
    return SilhouetteGlyph.draw(Objects.requireNonNull(tool, "tool"));
  }

  /** How many millimetres the side of a tool's small picture stands for. */
  public static double glyphSideMm(Silhouette tool) {
    return SilhouetteGlyph.sideMm(Objects.requireNonNull(tool, "tool"));
  }

  /** End and face of a board with its growth rings; {@code idPrefix} as above. */
  public static String boardGrain(BoardCut cut, String title, String idPrefix) {
    Objects.requireNonNull(cut, "cut");
    return GrainDrawing.draw(cut, title, idPrefix);
  }

  /**
   * Abrasive grains drawn to scale.
   *
   * @param micron mean grain size, 1 to 5000
   */
  public static String grit(double micron, String title, String idPrefix) {
    if (!(micron >= 1 && micron <= 5000)) {
      throw new IllegalArgumentException("micron must be 1 to 5000, is " + micron);
    }
    return GritDrawing.draw(micron, title, idPrefix);
  }

  /** How clamping pressure spreads to the glue line; {@code idPrefix} as above. */
  public static String clampCone(ClampSpread spread, String title, String idPrefix) {
    Objects.requireNonNull(spread, "spread");
    return ClampDrawing.draw(spread, title, idPrefix);
  }

  /**
   * What a fault looks like, on 96 by 96 units; empty if there is no picture of that name.
   *
   * @param picture from the list in the schema of faults
   * @param words what the picture shows, for someone who cannot see it
   */
  public static Optional<String> fault(
      String picture, String title, String words, String idPrefix) {
    return FaultDrawing.draw(picture, new Label(idPrefix, title, words));
  }

  /** The same, small, to stand beside its name; hidden from screen readers. */
  public static Optional<String> faultGlyph(String picture) {
    return FaultDrawing.glyph(picture);
  }

  /** A window mirrored in a film of this sheen, over a scale; {@code idPrefix} as above. */
  public static String sheen(SheenSwatch swatch, String title, String idPrefix) {
    return SheenDrawing.draw(Objects.requireNonNull(swatch, "swatch"), title, idPrefix);
  }

  /** The same without the scale, to stand beside others; {@code idPrefix} as above. */
  public static String sheenPatch(SheenSwatch swatch, String title, String idPrefix) {
    return SheenDrawing.patch(Objects.requireNonNull(swatch, "swatch"), title, idPrefix);
  }

  /**
   * A joint with its parts drawn apart.
   *
   * @param idPrefix a letter, then letters, digits, - or _; unique on the page
   * @throws IllegalArgumentException if a size the joint is drawn by is missing
   */
  public static String joint(JointForm form, JointSizes sizes, String title, String idPrefix) {
    return JointDrawing.draw(
        Objects.requireNonNull(form, "form"),
        Objects.requireNonNull(sizes, "sizes"),
        title,
        idPrefix);
  }

  /**
   * The end of a board whose edge this bit has cut, five units a millimetre.
   *
   * @param idPrefix a letter, then letters, digits, - or _; unique on the page
   * @throws IllegalArgumentException if the geometry has {@link BitGeometry#problems}
   */
  public static String edgeCut(BitGeometry geometry, String title, String idPrefix) {
    check(geometry);
    return EdgeDrawing.cut(geometry, title, idPrefix);
  }

  /**
   * The end of a board with an edge worked without a profile bit, at the same scale.
   *
   * @param sizeMm what is cut, 0 to 15
   * @param idPrefix a letter, then letters, digits, - or _; unique on the page
   */
  public static String edge(EdgeShape shape, double sizeMm, String title, String idPrefix) {
    if (!(sizeMm >= 0 && sizeMm <= 15)) {
      throw new IllegalArgumentException("sizeMm must be 0 to 15, is " + sizeMm);
    }
    return EdgeDrawing.shape(Objects.requireNonNull(shape, "shape"), sizeMm, title, idPrefix);
  }

  /**
   * How a thing is done; empty if there is no sketch of that name.
   *
   * @param name from the list in the schema of techniques and tools
   * @param idPrefix a letter, then letters, digits, - or _; unique on the page
   */
  public static Optional<String> sketch(String name, String title, String idPrefix) {
    return SketchDrawing.draw(Objects.requireNonNull(name, "name"), title, idPrefix);
  }

  private static void check(BitGeometry geometry) {
    List<String> problems = BitGeometry.problems(Objects.requireNonNull(geometry, "geometry"));
    if (!problems.isEmpty()) {
      throw new IllegalArgumentException(String.join("; ", problems));
    }
  }
}
