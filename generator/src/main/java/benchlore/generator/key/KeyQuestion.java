package benchlore.generator.key;

import benchlore.generator.content.LibraryRecord;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/**
 * A question of a key.
 *
 * @param words what is asked
 * @param answers every answer, in the order shown
 * @param answer the answers that fit a record, at least one, each among {@code answers}
 */
public record KeyQuestion(
    String words, List<String> answers, Function<LibraryRecord, Set<String>> answer) {
  /** Copies the list. */
  public KeyQuestion {
    answers = List.copyOf(answers);
  }

  /** The answers that fit a record. */
  public Set<String> of(LibraryRecord entry) {
    Set<String> fitting = answer.apply(entry);
    if (fitting.isEmpty() || !answers.containsAll(fitting)) {
      throw new IllegalStateException(words + " has no place for " + entry.id() + ": " + fitting);
    }
    return fitting;
  }
}
