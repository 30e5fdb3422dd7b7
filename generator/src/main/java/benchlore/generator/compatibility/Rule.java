package benchlore.generator.compatibility;

import benchlore.generator.compatibility.Condition.Match;
import benchlore.generator.content.Fact;
import benchlore.generator.content.Facts;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * One row of a table's file: where its conditions are met, its verdict and reason hold.
 *
 * @param row conditions on the row's thing, by fact
 * @param column conditions on the column's thing, by fact
 * @param reason verdict, why and where from
 */
record Rule(Map<String, Condition> row, Map<String, Condition> column, Table.Reason reason) {
  Rule {
    row = Map.copyOf(row);
    column = Map.copyOf(column);
  }

  static Rule from(Facts written, TableKind kind) {
    Map<String, Condition> row = conditions(written, kind.row());
    Map<String, Condition> column = conditions(written, kind.column());
    List<Condition> all = new ArrayList<>(row.values());
    all.addAll(column.values());
    Table.Reason reason =
        new Table.Reason(
            Verdict.parse(written.words("verdict")),
            written.words("why"),
            all.stream().flatMap(c -> c.limit().stream()).findFirst(),
            written.words("from"),
            written.words("source"),
            written.words("where"));
    return new Rule(row, column, reason);
  }

  /** A group of conditions, or one list of ids for an axis the file describes itself. */
  private static Map<String, Condition> conditions(Facts written, Axis axis) {
    Map<String, Condition> conditions = new LinkedHashMap<>();
    Optional<Fact> side = written.find(axis.side());
    if (side.isPresent() && side.get() instanceof Fact.Group group) {
      group.facts().forEach((key, fact) -> conditions.put(key, Condition.from(fact)));
    } else {
      side.ifPresent(fact -> conditions.put(axis.idKey(), Condition.from(fact)));
    }
    return conditions;
  }

  Match match(TableItem rowThing, TableItem columnThing) {
    return match(row, rowThing).and(match(column, columnThing));
  }

  /** Facts this rule asks for that neither thing has. */
  List<String> missing(TableItem rowThing, TableItem columnThing) {
    List<String> missing = new ArrayList<>(absent(row.keySet(), rowThing));
    missing.addAll(absent(column.keySet(), columnThing));
    return missing;
  }

  private static Match match(Map<String, Condition> conditions, TableItem thing) {
    Match match = Match.YES;
    for (Map.Entry<String, Condition> condition : conditions.entrySet()) {
      Optional<Fact> fact = Optional.ofNullable(thing.facts().get(condition.getKey()));
      match = match.and(condition.getValue().match(fact));
    }
    return match;
  }

  private static List<String> absent(Set<String> keys, TableItem thing) {
    return keys.stream().filter(key -> !thing.facts().containsKey(key)).sorted().toList();
  }
}
