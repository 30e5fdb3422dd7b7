package benchlore.schedules.cutting;

import benchlore.schedules.answer.Message;
import java.util.List;

/**
 * Whether a bit can make a cut.
 *
 * @param reaches true if nothing stands against it
 * @param stickOutMetre how far it must stand out of the collet
 * @param gripMetre shank left in the collet then; below 0 the bit is too short altogether
 * @param neededGripMetre least grip: three quarters of the shank and four fifths of the bore, so
 *     far as the bore goes
 * @param problems everything that stands against it, each with what to do
 */
public record Reach(
    boolean reaches,
    double stickOutMetre,
    double gripMetre,
    double neededGripMetre,
    List<Message> problems) {
  /** Copies the list. */
  public Reach {
    problems = List.copyOf(problems);
  }
}
