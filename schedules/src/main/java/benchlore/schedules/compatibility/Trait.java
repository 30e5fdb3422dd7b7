package benchlore.schedules.compatibility;

import benchlore.schedules.quantity.SourcedRange;
import java.util.Set;

/** One thing that is known of what is paired: a wood's hardness, a finish's family. */
public sealed interface Trait {
  /**
   * One word or several.
   *
   * @param words at least one, unless the list written down is empty
   */
  record Words(Set<String> words) implements Trait {
    /** Copies the words. */
    public Words {
      words = Set.copyOf(words);
    }
  }

  /**
   * Yes or no.
   *
   * @param yes which
   */
  record Flag(boolean yes) implements Trait {}

  /**
   * A figure.
   *
   * @param range from its least to its most, in the figure's own unit
   */
  record Measure(SourcedRange range) implements Trait {}
}
