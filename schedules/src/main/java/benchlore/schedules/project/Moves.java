package benchlore.schedules.project;

import benchlore.schedules.movement.Opening;
import java.util.Optional;

/** How a part is held in its place, and so where it needs room to grow. */
public enum Moves {
  /** Hung at one edge, a door, a hatch, a lid: all growth shows at the latch. */
  HINGED(Optional.of(Opening.Hanging.ONE_EDGE)),
  /** Runs between two guides, a drawer, a sliding panel: half of the growth on each side. */
  SLIDING(Optional.of(Opening.Hanging.CENTRED)),
  /** In no opening: it grows where it stands. */
  FIXED(Optional.empty());

  private final Optional<Opening.Hanging> hanging;

  Moves(Optional<Opening.Hanging> hanging) {
    this.hanging = hanging;
  }

  /** As the rules of fitting have it; empty of a part that moves in no opening. */
  public Optional<Opening.Hanging> hanging() {
    return hanging;
  }
}
