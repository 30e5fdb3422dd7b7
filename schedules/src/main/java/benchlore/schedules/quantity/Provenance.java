package benchlore.schedules.quantity;

import java.util.Objects;

/**
 * Where a number comes from.
 *
 * @param kind how far it can be traced
 * @param title the published work for {@link Kind#SOURCE}; otherwise a few words or empty
 * @param where section or table in that work; otherwise empty
 */
public record Provenance(Kind kind, String title, String where) {
  /** How far a number can be traced. */
  public enum Kind {
    /** A published standard, handbook table or government guide, named by title and section. */
    SOURCE,
    /** A fact or rule of the trade with no single source. */
    COMMON_PRACTICE,
    /** Believed right, not checked against a page; shown as such. */
    FROM_MEMORY,
    /** Given by the person asking. */
    INPUT,
    /** Worked out by the engine from the others. */
    COMPUTED
  }

  /** Refuses a source without a title. */
  public Provenance {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(title, "title");
    Objects.requireNonNull(where, "where");
    if (kind == Kind.SOURCE && title.isEmpty()) {
      throw new IllegalArgumentException("title of a source must not be empty");
    }
  }

  /** A published source. */
  public static Provenance source(String title, String where) {
    return new Provenance(Kind.SOURCE, title, where);
  }

  /** A rule of the trade; {@code note} says which, may be empty. */
  public static Provenance commonPractice(String note) {
    return new Provenance(Kind.COMMON_PRACTICE, note, "");
  }

  /** Believed right, not checked; {@code note} may be empty. */
  public static Provenance fromMemory(String note) {
    return new Provenance(Kind.FROM_MEMORY, note, "");
  }

  /** Given by the person asking. */
  public static Provenance input() {
    return new Provenance(Kind.INPUT, "", "");
  }

  /** Worked out by the engine. */
  public static Provenance computed() {
    return new Provenance(Kind.COMPUTED, "", "");
  }
}
