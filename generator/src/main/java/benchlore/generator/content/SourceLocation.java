package benchlore.generator.content;

/**
 * Where a value was written.
 *
 * @param place file, line and column
 * @param key the key path: {@code data.bearing.diameter}; empty for the whole file
 */
public record SourceLocation(Place place, String key) {
  /** A problem here. */
  public Problem problem(String what, String todo) {
    return new Problem(place, key, what, todo);
  }
}
