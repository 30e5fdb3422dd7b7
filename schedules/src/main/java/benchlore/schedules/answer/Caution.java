package benchlore.schedules.answer;

/**
 * A warning that stands at the step where it matters.
 *
 * @param code short stable name in kebab case, the same wherever this caution is given: "oily-rags"
 * @param severity how bad it can get
 * @param what what can happen and why, in plain words
 * @param measure what to do about it; defers to the label, the safety data sheet or local codes
 *     where those decide
 */
public record Caution(String code, Severity severity, Message what, Message measure) {
  /** How bad it can get, mildest first. */
  public enum Severity {
    /** The work may be spoiled. */
    WORK,
    /** Someone's health may suffer. */
    HEALTH,
    /** Someone may be badly hurt or a fire may start. */
    DANGER
  }

  /** Refuses nulls. */
  public Caution {
    if (code == null || severity == null || what == null || measure == null) {
      throw new NullPointerException("code, severity, what and measure");
    }
  }

  /** The same caution whose sentence begins after this prefix. */
  public Caution withoutPrefix(String prefix) {
    if (!what.pattern().startsWith(prefix)) {
      return this;
    }
    String rest = what.pattern().substring(prefix.length()).strip();
    return new Caution(code, severity, new Message(rest, what.quantities()), measure);
  }
}
