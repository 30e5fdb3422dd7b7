package benchlore.generator.library;

import benchlore.schedules.answer.Datum;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** One checked value of a record's data, as the schema of its kind describes it. */
public sealed interface Fact {
  /**
   * A figure.
   *
   * @param datum in SI, with its provenance
   * @param unit the unit it was written in
   * @param sourceId id of its source record, or empty
   * @param note remark, or empty
   */
  record Measure(Datum datum, String unit, String sourceId, String note) implements Fact {}

  /**
   * Text or a word from a closed list.
   *
   * @param text as written
   */
  record Words(String text) implements Fact {}

  /**
   * Yes or no.
   *
   * @param yes which
   */
  record Flag(boolean yes) implements Fact {}

  /**
   * Named facts, in the order written.
   *
   * @param facts by key
   */
  record Group(Map<String, Fact> facts) implements Fact {
    /** Copies the map, keeping its order. */
    public Group {
      facts = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(facts));
    }
  }

  /**
   * A list.
   *
   * @param items in the order written
   */
  record Items(List<Fact> items) implements Fact {
    /** Copies the list. */
    public Items {
      items = List.copyOf(items);
    }
  }
}
