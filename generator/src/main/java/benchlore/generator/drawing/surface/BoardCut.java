package benchlore.generator.drawing.surface;

import benchlore.generator.drawing.svg.Point;

/** How a board was sawn from the log, by the angle between growth rings and face. */
public enum BoardCut {
  /** Rings at 0 to 30 degrees to the face. */
  FLAT("flat-sawn", 0, 30, new Point(0, -46)),
  /** Rings at 30 to 60 degrees to the face. */
  RIFT("rift-sawn", 30, 60, new Point(-250, -250)),
  /** Rings at 60 to 90 degrees to the face. */
  QUARTER("quarter-sawn", 60, 90, new Point(-260, 0));

  private final String word;
  private final int fromDegrees;
  private final int toDegrees;
  private final double pithX;
  private final double pithZ;

  BoardCut(String word, int fromDegrees, int toDegrees, Point pith) {
    this.word = word;
    this.fromDegrees = fromDegrees;
    this.toDegrees = toDegrees;
    this.pithX = pith.x();
    this.pithZ = pith.z();
  }

  /** The trade's word. */
  public String word() {
    return word;
  }

  int fromDegrees() {
    return fromDegrees;
  }

  int toDegrees() {
    return toDegrees;
  }

  /** Where the log's pith lies, seen from the middle of the board's end; z up, in page units. */
  Point pith() {
    return new Point(pithX, pithZ);
  }
}
