package benchlore.generator.drawing.joint;

/** Which way the fibres of a piece run; none for metal and for the air in a hole. */
enum Grain {
  /** To the right. */
  X(1, 0, 0),
  /** Away from you. */
  Y(0, 1, 0),
  /** Up. */
  Z(0, 0, 1),
  /** No grain. */
  NONE(0, 0, 0);

  private final int right;
  private final int away;
  private final int up;

  Grain(int right, int away, int up) {
    this.right = right;
    this.away = away;
    this.up = up;
  }

  /** One millimetre along the fibres. */
  Space along() {
    return new Space(right, away, up);
  }
}
