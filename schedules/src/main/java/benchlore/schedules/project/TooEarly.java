package benchlore.schedules.project;

import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.Message;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.quantity.Unit;

/** What to say of a step that was done before what it waited for was over. */
final class TooEarly {
  private TooEarly() {}

  /**
   * A joint let go, or cut, before it had set: it can come apart under load or under the cutter.
   */
  static Caution joint(double seconds) {
    return new Caution(
        "joint-too-young",
        Caution.Severity.DANGER,
        what(seconds),
        Message.of(
            "Clamp it again if the line has opened. Don't load it or bring it near a cutter until"
                + " the whole time has passed: a young joint flies apart. The label wins."));
  }

  /** Anything else: the work may be spoiled. */
  static Caution work(double seconds) {
    return new Caution(
        "done-early",
        Caution.Severity.WORK,
        what(seconds),
        Message.of(
            "Look at it before you go on: press a fingernail where it does not show. Soft or"
                + " tacky, leave it for as long again; what is wrinkled or lifts comes off."));
  }

  private static Message what(double seconds) {
    return Message.of(
        "This was done {0} before what it waits for was over.", Quantity.of(seconds, Unit.SECOND));
  }
}
