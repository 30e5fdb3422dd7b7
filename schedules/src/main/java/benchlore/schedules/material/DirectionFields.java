package benchlore.schedules.material;

import java.util.Optional;
import java.util.function.Function;

/**
 * The fields of directions, the same in every kind of record that has them.
 *
 * @param <T> the kind of record
 */
record DirectionFields<T>(
    Field<T, Optional<String>> begin,
    Field<T, String> putOn,
    Field<T, Optional<String>> sprayed,
    Field<T, Optional<String>> afterwards,
    Field<T, String> lookFor) {
  /** Those of a record that keeps its directions there. */
  static <T> DirectionFields<T> of(Function<T, Directions> how) {
    return new DirectionFields<>(
        Field.optionalText("begin", t -> how.apply(t).begin()),
        Field.text("put-on", t -> how.apply(t).putOn()),
        Field.optionalText("sprayed", t -> how.apply(t).sprayed()),
        Field.optionalText("afterwards", t -> how.apply(t).afterwards()),
        Field.text("look-for", t -> how.apply(t).lookFor()));
  }

  Directions read(FieldSource from) {
    return new Directions(
        begin.read(from),
        putOn.read(from),
        sprayed.read(from),
        afterwards.read(from),
        lookFor.read(from));
  }
}
