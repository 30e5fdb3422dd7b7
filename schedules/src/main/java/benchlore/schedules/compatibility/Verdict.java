package benchlore.schedules.compatibility;

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
  public Verdict stricter(Verdict other) {
    return compareTo(other) >= 0 ? this : other;
  }
}
