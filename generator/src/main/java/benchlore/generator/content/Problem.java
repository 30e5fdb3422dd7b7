package benchlore.generator.content;

import java.util.Comparator;

/**
 * Something wrong in a content file, for its author.
 *
 * @param place where it was written
 * @param key the key path: {@code data.recoat-opens.unit}; empty for the whole file
 * @param what what is wrong
 * @param todo what to do about it: what is accepted, the nearest suggestion
 */
public record Problem(Place place, String key, String what, String todo) {
  /** By file, then line, then column, then text. */
  public static final Comparator<Problem> IN_ORDER =
      Comparator.comparing((Problem p) -> p.place().file())
          .thenComparing(p -> p.place().line())
          .thenComparing(p -> p.place().column())
          .thenComparing(Problem::what);
}
