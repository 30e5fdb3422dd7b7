package benchlore.schedules.material;

import benchlore.schedules.quantity.SourcedRange;
import java.util.List;
import java.util.Optional;

/**
 * What a material is read from, by key: the facts of a record file, an object of a JSON request.
 *
 * <p>Everything that is missing or of the wrong kind is refused with an {@link
 * IllegalArgumentException} that names it, unless the source was checked before.
 */
public interface FieldSource {
  /** A figure that must be there. */
  SourcedRange figure(String key);

  /** A figure; empty where it isn't stated. */
  Optional<SourcedRange> optionalFigure(String key);

  /** True or false. */
  boolean flag(String key);

  /** A text that must be there. */
  String text(String key);

  /** A text; empty where none is given. */
  Optional<String> optionalText(String key);

  /** One of the words known. */
  String word(String key, List<String> known);

  /** Some of the words known, in the order given. */
  List<String> words(String key, List<String> known);

  /** Groups of fields; none where nothing is stated. */
  List<FieldSource> groups(String key);
}
