package benchlore.generator.content;

import benchlore.schedules.quantity.SourcedRange;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** One checked value of a record's data, as the schema of its kind describes it. */
public sealed interface Fact {
  /** Where it was written. */
  SourceLocation spot();

  /**
   * A figure.
   *
   * @param datum in SI, with its provenance
   * @param unit the unit it was written in
   * @param sourceId id of its source record, or empty
   * @param note remark, or empty
   * @param spot where it was written
   */
  record Measure(SourcedRange datum, String unit, String sourceId, String note, SourceLocation spot)
      implements Fact {}

  /**
   * Text or a word from a closed list.
   *
   * @param text as written
   * @param spot where it was written
   */
  record Words(String text, SourceLocation spot) implements Fact {}

  /**
   * Yes or no.
   *
   * @param yes which
   * @param spot where it was written
   */
  record Flag(boolean yes, SourceLocation spot) implements Fact {}

  /**
   * Named facts, in the order written.
   *
   * @param facts by key
   * @param spot where it was written
   */
  record Group(Map<String, Fact> facts, SourceLocation spot) implements Fact {
    /** Copies the map, keeping its order. */
    public Group {
      facts = Collections.unmodifiableMap(new LinkedHashMap<>(facts));
    }
  }

  /**
   * A list.
   *
   * @param items in the order written
   * @param spot where it was written
   */
  record Items(List<Fact> items, SourceLocation spot) implements Fact {
    /** Copies the list. */
    public Items {
      items = List.copyOf(items);
    }
  }
}
