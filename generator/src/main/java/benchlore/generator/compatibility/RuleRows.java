package benchlore.generator.compatibility;

import benchlore.generator.content.Fact;
import benchlore.generator.content.Facts;
import benchlore.schedules.compatibility.Condition;
import benchlore.schedules.compatibility.Rule;
import benchlore.schedules.compatibility.Trait;
import benchlore.schedules.compatibility.Verdict;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Rows of a table's file as the engine's rules, and facts of a record as traits they ask for. */
final class RuleRows {
  private RuleRows() {}

  /** One row of a table's file. */
  static Rule<Table.Reason> rule(Facts written, TableKind kind) {
    Map<String, Condition> row = conditions(written, kind.row());
    Map<String, Condition> column = conditions(written, kind.column());
    List<Condition> all = new ArrayList<>(row.values());
    all.addAll(column.values());
    Table.Reason reason =
        new Table.Reason(
            verdict(written.words("verdict")),
            written.words("why"),
            all.stream().flatMap(c -> c.limit().stream()).findFirst(),
            written.words("from"),
            written.words("source"),
            written.words("where"));
    return new Rule<>(row, column, reason);
  }

  /** From the word of a rule row; each table has its own three. */
  private static Verdict verdict(String word) {
    return switch (word) {
      case "good", "yes", "best" -> Verdict.GOOD;
      case "with-care", "works" -> Verdict.CARE;
      case "no" -> Verdict.NO;
      default -> throw new IllegalArgumentException("word: " + word);
    };
  }

  /** A group of conditions, or one list of ids for an axis the file describes itself. */
  private static Map<String, Condition> conditions(Facts written, Axis axis) {
    Map<String, Condition> conditions = new LinkedHashMap<>();
    Optional<Fact> side = written.find(axis.side());
    if (side.isPresent() && side.get() instanceof Fact.Group group) {
      group.facts().forEach((key, fact) -> conditions.put(key, condition(fact)));
    } else {
      side.ifPresent(fact -> conditions.put(axis.idKey(), condition(fact)));
    }
    return conditions;
  }

  /** A list, yes or no, or {@code none-of}, {@code at-least}, {@code at-most}. */
  private static Condition condition(Fact written) {
    if (written instanceof Fact.Items items) {
      return new Condition.AnyOf(words(items));
    }
    if (written instanceof Fact.Flag flag) {
      return new Condition.Is(flag.yes());
    }
    Map<String, Fact> group = ((Fact.Group) written).facts();
    if (group.containsKey("none-of")) {
      return new Condition.NoneOf(words(group.get("none-of")));
    }
    return group.containsKey("at-least")
        ? new Condition.Least(((Fact.Measure) group.get("at-least")).datum())
        : new Condition.Most(((Fact.Measure) group.get("at-most")).datum());
  }

  /** What a rule may ask of a record, by key; lists of groups are asked by nobody. */
  static Map<String, Trait> traits(Map<String, Fact> facts) {
    Map<String, Trait> traits = new LinkedHashMap<>();
    facts.forEach((key, fact) -> trait(fact).ifPresent(trait -> traits.put(key, trait)));
    return traits;
  }

  private static Optional<Trait> trait(Fact fact) {
    if (fact instanceof Fact.Flag flag) {
      return Optional.of(new Trait.Flag(flag.yes()));
    } else if (fact instanceof Fact.Measure measure) {
      return Optional.of(new Trait.Measure(measure.datum()));
    }
    boolean words =
        fact instanceof Fact.Words
            || (fact instanceof Fact.Items items
                && items.items().stream().allMatch(Fact.Words.class::isInstance));
    return words ? Optional.of(new Trait.Words(words(fact))) : Optional.empty();
  }

  private static Set<String> words(Fact fact) {
    List<String> words =
        fact instanceof Fact.Items items
            ? items.items().stream().map(item -> ((Fact.Words) item).text()).toList()
            : List.of(((Fact.Words) fact).text());
    return Set.copyOf(words);
  }
}
