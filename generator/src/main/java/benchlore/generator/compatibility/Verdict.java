package benchlore.generator.compatibility;

/** How well two things go together, kindest first: the strictest rule that applies decides. */
public enum Verdict {
  /** Goes well, or is the best choice. */
  GOOD,
  /** Works, with something to mind. */
  CARE,
  /** Nothing is written down that decides it. */
  UNKNOWN,
  /** Does not work, or harms. */
  NO;

  /** The stricter of two. */
  Verdict stricter(Verdict other) {
    return compareTo(other) >= 0 ? this : other;
  }

  /** From the word of a rule row; each table has its own three. */
  static Verdict parse(String word) {
    return switch (word) {
      case "good", "yes", "best" -> GOOD;
      case "with-care", "works" -> CARE;
      case "no" -> NO;
      default -> throw new IllegalArgumentException("word: " + word);
    };
  }
}
