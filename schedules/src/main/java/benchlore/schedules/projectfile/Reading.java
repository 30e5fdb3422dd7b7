package benchlore.schedules.projectfile;

import java.util.List;
import java.util.Optional;

/**
 * What a file says, or everything that is wrong in it.
 *
 * @param value what it says; empty if there are problems
 * @param problems all of them, each once
 * @param <T> what the file is read as
 */
public record Reading<T>(Optional<T> value, List<FileProblem> problems) {
  /** Copies the list; refuses a file that is both sound and not. */
  public Reading {
    problems = List.copyOf(problems);
    if (value.isPresent() != problems.isEmpty()) {
      throw new IllegalArgumentException("a file has a value or problems");
    }
  }
}
