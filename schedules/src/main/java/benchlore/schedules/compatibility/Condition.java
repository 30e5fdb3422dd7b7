package benchlore.schedules.compatibility;

import benchlore.schedules.quantity.SourcedRange;
import java.util.Optional;
import java.util.Set;

/** What a rule asks of one trait. A trait nobody wrote down is neither met nor failed. */
public sealed interface Condition {
  /** Whether a condition, or all of a rule's, are met. */
  enum Match {
    /** Met. */
    YES,
    /** A trait it asks for is not written down. */
    UNKNOWN,
    /** Not met. */
    NO;

    /** The answer for two conditions together. */
    Match and(Match other) {
      return compareTo(other) >= 0 ? this : other;
    }
  }

  /** Whether a trait that is written down meets it; one of another sort does not. */
  boolean met(Trait trait);

  /** The limit it compares with, if it does. */
  default Optional<SourcedRange> limit() {
    return Optional.empty();
  }

  /**
   * One of these words: the trait's own, or any of its list.
   *
   * @param words which
   */
  record AnyOf(Set<String> words) implements Condition {
    /** Copies the words. */
    public AnyOf {
      words = Set.copyOf(words);
    }

    @Override
    public boolean met(Trait trait) {
      return trait instanceof Trait.Words own && own.words().stream().anyMatch(words::contains);
    }
  }

  /**
   * None of these words.
   *
   * @param words which
   */
  record NoneOf(Set<String> words) implements Condition {
    /** Copies the words. */
    public NoneOf {
      words = Set.copyOf(words);
    }

    @Override
    public boolean met(Trait trait) {
      return trait instanceof Trait.Words own && own.words().stream().noneMatch(words::contains);
    }
  }

  /**
   * Yes or no.
   *
   * @param wanted which
   */
  record Is(boolean wanted) implements Condition {
    @Override
    public boolean met(Trait trait) {
      return trait instanceof Trait.Flag flag && flag.yes() == wanted;
    }
  }

  /**
   * At least this much; a range that reaches the limit counts.
   *
   * @param least the limit, in the trait's unit
   */
  record Least(SourcedRange least) implements Condition {
    @Override
    public boolean met(Trait trait) {
      return trait instanceof Trait.Measure own && own.range().high() >= least.low();
    }

    @Override
    public Optional<SourcedRange> limit() {
      return Optional.of(least);
    }
  }

  /**
   * At most this much; a range that reaches the limit counts.
   *
   * @param most the limit, in the trait's unit
   */
  record Most(SourcedRange most) implements Condition {
    @Override
    public boolean met(Trait trait) {
      return trait instanceof Trait.Measure own && own.range().low() <= most.high();
    }

    @Override
    public Optional<SourcedRange> limit() {
      return Optional.of(most);
    }
  }
}
