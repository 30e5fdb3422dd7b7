package benchlore.schedules.project;

import benchlore.schedules.answer.Caution;
import benchlore.schedules.caution.ShopRows;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.quantity.Unit;

/** What to say of a step that was done before what it waited for was over. */
final class TooEarly {
  private TooEarly() {}

  /**
   * A joint let go, or cut, before it had set: it can come apart under load or under the cutter.
   */
  static Caution joint(double seconds) {
    return ShopRows.JOINT_TOO_YOUNG.caution(Quantity.of(seconds, Unit.SECOND));
  }

  /** Anything else: the work may be spoiled. */
  static Caution work(double seconds) {
    return ShopRows.DONE_EARLY.caution(Quantity.of(seconds, Unit.SECOND));
  }
}
