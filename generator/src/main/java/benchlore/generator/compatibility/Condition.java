package benchlore.generator.compatibility;

import benchlore.generator.content.Fact;
import benchlore.schedules.quantity.SourcedRange;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What a rule asks of one fact. A fact nobody wrote down is neither met nor failed. */
sealed interface Condition {
  /** Whether a condition, or all of a rule's, are met. */
  enum Match {
    /** Met. */
    YES,
    /** A fact it asks for is not written down. */
    UNKNOWN,
    /** Not met. */
    NO;

    /** The answer for two conditions together. */
    Match and(Match other) {
      return compareTo(other) >= 0 ? this : other;
    }

    static Match of(boolean met) {
      return met ? YES : NO;
    }
  }

  /** Whether a written fact meets it. */
  boolean met(Fact fact);

  /** The limit it compares with, if it does. */
  default Optional<SourcedRange> limit() {
    return Optional.empty();
  }

  /** Whether it is met, the fact perhaps absent. */
  default Match match(Optional<Fact> fact) {
    return fact.map(f -> Match.of(met(f))).orElse(Match.UNKNOWN);
  }

  /** One of these words: the fact's own, or any of its list. */
  record AnyOf(Set<String> words) implements Condition {
    /** Copies the words. */
    public AnyOf {
      words = Set.copyOf(words);
    }

    @Override
    public boolean met(Fact fact) {
      return read(fact).stream().anyMatch(words::contains);
    }
  }

  /** None of these words. */
  record NoneOf(Set<String> words) implements Condition {
    /** Copies the words. */
    public NoneOf {
      words = Set.copyOf(words);
    }

    @Override
    public boolean met(Fact fact) {
      return read(fact).stream().noneMatch(words::contains);
    }
  }

  /** Yes or no. */
  record Is(boolean wanted) implements Condition {
    @Override
    public boolean met(Fact fact) {
      return ((Fact.Flag) fact).yes() == wanted;
    }
  }

  /** At least this much; a range that reaches the limit counts. */
  record Least(SourcedRange least) implements Condition {
    @Override
    public boolean met(Fact fact) {
      return ((Fact.Measure) fact).datum().high() >= least.low();
    }

    @Override
    public Optional<SourcedRange> limit() {
      return Optional.of(least);
    }
  }

  /** At most this much; a range that reaches the limit counts. */
  record Most(SourcedRange most) implements Condition {
    @Override
    public boolean met(Fact fact) {
      return ((Fact.Measure) fact).datum().low() <= most.high();
    }

    @Override
    public Optional<SourcedRange> limit() {
      return Optional.of(most);
    }
  }

  /** From a rule row: a list, yes or no, or {@code none-of}, {@code at-least}, {@code at-most}. */
  static Condition from(Fact written) {
    if (written instanceof Fact.Items items) {
      return new AnyOf(Set.copyOf(read(items)));
    }
    if (written instanceof Fact.Flag flag) {
      return new Is(flag.yes());
    }
    var group = ((Fact.Group) written).facts();
    if (group.containsKey("none-of")) {
      return new NoneOf(Set.copyOf(read(group.get("none-of"))));
    }
    return group.containsKey("at-least")
        ? new Least(((Fact.Measure) group.get("at-least")).datum())
        : new Most(((Fact.Measure) group.get("at-most")).datum());
  }

  private static List<String> read(Fact fact) {
    return fact instanceof Fact.Items items
        ? items.items().stream().map(item -> ((Fact.Words) item).text()).toList()
        : List.of(((Fact.Words) fact).text());
  }
}
