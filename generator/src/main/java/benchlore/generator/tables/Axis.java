package benchlore.generator.tables;

import benchlore.generator.library.Entry;
import benchlore.generator.library.Fact;
import benchlore.generator.library.Facts;
import benchlore.generator.library.Kind;
import benchlore.generator.library.Library;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The rows or the columns of a table.
 *
 * @param side key of its conditions in a rule row: {@code wood}
 * @param idKey key under which a rule names single ones: {@code species}
 * @param kind the records it lists; empty where the table's file describes them itself
 * @param described key of those descriptions in the file: {@code jobs}; empty for records
 * @param one what one of them is called
 */
public record Axis(String side, String idKey, Optional<Kind> kind, String described, String one) {
  static Axis of(Kind kind, String side, String idKey) {
    return new Axis(side, idKey, Optional.of(kind), "", kind.one());
  }

  static Axis described(String side, String key, String one) {
    return new Axis(side, side, Optional.empty(), key, one);
  }

  /** Its things: records by title, descriptions in the order written. */
  List<Thing> things(Facts file, Library library) {
    List<Thing> things = new ArrayList<>();
    if (kind.isPresent()) {
      for (Entry entry : library.of(kind.get())) {
        things.add(Thing.from(entry, idKey));
      }
    } else {
      Facts group = file.group(described);
      group
          .data()
          .facts()
          .forEach(
              (id, fact) -> things.add(Thing.described(id, group.of((Fact.Group) fact), idKey)));
    }
    return List.copyOf(things);
  }
}
