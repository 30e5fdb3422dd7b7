package benchlore.generator.site;

import benchlore.generator.library.Entry;
import java.util.List;

/** Drawings for a record's page. */
final class BitDrawings {
  private BitDrawings() {}

  static List<String> of(Entry entry) {
    return List.of();
  }
}
