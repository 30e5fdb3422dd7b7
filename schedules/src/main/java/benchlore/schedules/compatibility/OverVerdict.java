package benchlore.schedules.compatibility;

import benchlore.schedules.material.FinishFamily;
import benchlore.schedules.time.Moment;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Whether and when one finish may go over another.
 *
 * @param holds how it holds
 * @param from the first moment the next coat (the barrier, if there is one) may go on; empty if it
 *     never may
 * @param scuff whether the under coat is scuffed first
 * @param barrier the families to put between, from below; usually none or one
 * @param why the reasons, plain sentences, in the order they decided
 * @param rules the reasons that decided, the first of them first; one of its own for a finish over
 *     itself
 */
public record OverVerdict(
    OverReason.Holds holds,
    Optional<Moment> from,
    boolean scuff,
    List<FinishFamily> barrier,
    List<String> why,
    List<OverReason> rules) {
  /** Copies the lists; refuses nulls. */
  public OverVerdict {
    Objects.requireNonNull(holds, "holds");
    Objects.requireNonNull(from, "from");
    barrier = List.copyOf(barrier);
    why = List.copyOf(why);
    rules = List.copyOf(rules);
  }
}
