package benchlore.generator.compatibility;

import benchlore.generator.content.Fact;
import benchlore.generator.content.Facts;
import benchlore.generator.content.Kind;
import benchlore.generator.content.Library;
import benchlore.generator.content.LibraryRecord;
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
  List<TableItem> things(Facts file, Library library) {
    List<TableItem> things = new ArrayList<>();
    if (kind.isPresent()) {
      for (LibraryRecord entry : library.of(kind.get())) {
        things.add(TableItem.from(entry, idKey));
      }
    } else {
      Facts group = file.group(described);
      group
          .data()
          .facts()
          .forEach(
              (id, fact) ->
                  things.add(TableItem.described(id, group.of((Fact.Group) fact), idKey)));
    }
    return List.copyOf(things);
  }
}
