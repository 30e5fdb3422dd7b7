package benchlore.generator.content;

import java.util.List;
import java.util.Optional;

/**
 * What loading gave: a library, or every problem found.
 *
 * @param value present only if there is no problem
 * @param problems every problem, in order of file and line
 * @param <T> what was loaded
 */
public record LoadResult<T>(Optional<T> value, List<Problem> problems) {
  /** Copies the list. */
  public LoadResult {
    problems = List.copyOf(problems);
  }

  /** A value without problems. */
  public static <T> LoadResult<T> of(T value) {
    return new LoadResult<>(Optional.of(value), List.of());
  }

  /** Problems and no value. */
  public static <T> LoadResult<T> failed(List<Problem> problems) {
    return new LoadResult<>(Optional.empty(), problems.stream().sorted(Problem.IN_ORDER).toList());
  }
}
