package benchlore.generator.page;

import benchlore.generator.compatibility.Table;
import benchlore.generator.content.Fact;
import benchlore.generator.content.LibraryRecord;
import benchlore.generator.planning.Content;
import benchlore.schedules.quantity.Provenance;
import java.util.EnumMap;
import java.util.Map;
import java.util.TreeMap;

/** How many figures and rules rest on each source, and how many figures on none. */
final class SourceCounts {
  private final Map<Provenance.Kind, Integer> byKind = new EnumMap<>(Provenance.Kind.class);
  private final Map<String, Integer> bySource = new TreeMap<>();

  SourceCounts(Content content) {
    for (Table table : content.tables()) {
      for (Table.Reason reason : table.reasons()) {
        if (!reason.source().isEmpty()) {
          bySource.merge(reason.source(), 1, Integer::sum);
        }
      }
    }
    for (LibraryRecord entry : content.library().entries().values()) {
      count(entry.facts().data());
      entry.facts().figures().forEach(this::count);
      count(entry.drawn().data());
    }
    content.joints().forEach(joint -> count(joint.data()));
    content.edges().forEach(edge -> count(edge.data()));
  }

  int of(Provenance.Kind kind) {
    return byKind.getOrDefault(kind, 0);
  }

  int of(String sourceId) {
    return bySource.getOrDefault(sourceId, 0);
  }

  int all() {
    return byKind.values().stream().mapToInt(Integer::intValue).sum();
  }

  private void count(Fact fact) {
    if (fact instanceof Fact.Measure measure) {
      byKind.merge(measure.datum().from().kind(), 1, Integer::sum);
      if (!measure.sourceId().isEmpty()) {
        bySource.merge(measure.sourceId(), 1, Integer::sum);
      }
    } else if (fact instanceof Fact.Group group) {
      group.facts().values().forEach(this::count);
    } else if (fact instanceof Fact.Items items) {
      items.items().forEach(this::count);
    }
  }
}
