package benchlore.schedules.air;

import benchlore.schedules.answer.Message;
import java.util.List;
import java.util.Objects;

/**
 * What to wear, and where it stops protecting.
 *
 * @param respirator the class
 * @param limits its limits, each a sentence; never empty unless no mask is needed
 */
public record RespiratorAdvice(Respirator respirator, List<Message> limits) {
  /** Copies the list. */
  public RespiratorAdvice {
    Objects.requireNonNull(respirator, "respirator");
    limits = List.copyOf(limits);
  }

  /** The mask as a shop sells it, or that none is needed. */
  public String words() {
    return respirator.words();
  }
}
