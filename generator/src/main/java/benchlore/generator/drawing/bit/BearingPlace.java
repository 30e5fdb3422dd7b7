package benchlore.generator.drawing.bit;

/** Where a router bit carries its guide bearing. */
public enum BearingPlace {
  /** No bearing. */
  NONE("none"),
  /** Below the cutting edges, at the tip. */
  TIP("tip"),
  /** Above the cutting edges, on the shank. */
  SHANK("shank"),
  /** One at the tip and one on the shank, of the same size. */
  BOTH("both");

  private final String word;

  BearingPlace(String word) {
    this.word = word;
  }

  /** The word used in records. */
  public String word() {
    return word;
  }

  boolean atTip() {
    return this == TIP || this == BOTH;
  }

  boolean onShank() {
    return this == SHANK || this == BOTH;
  }
}
