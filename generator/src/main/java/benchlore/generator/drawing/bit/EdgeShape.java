package benchlore.generator.drawing.bit;

import java.util.Arrays;
import java.util.Optional;

/** Edges of a board that no profile bit is needed for. */
public enum EdgeShape {
  /** As sawn or planed. */
  SQUARE("square"),
  /** Both arrises just taken off. */
  EASED("eased"),
  /** The upper corner cut off at 45 degrees. */
  CHAMFER("chamfer"),
  /** The upper corner rounded by half the thickness. */
  HALF_ROUND("half-round"),
  /** A slope over the whole thickness. */
  BEVEL("bevel"),
  /** A slope on the underside, so that the edge looks thin. */
  UNDER_BEVEL("under-bevel");

  private final String word;

  EdgeShape(String word) {
    this.word = word;
  }

  /** The word used in content. */
  public String word() {
    return word;
  }

  /** The shape of a word. */
  public static Optional<EdgeShape> parse(String word) {
    return Arrays.stream(values()).filter(shape -> shape.word.equals(word)).findFirst();
  }
}
