package benchlore.schedules.answer;

import benchlore.schedules.quantity.Provenance;
import java.util.Objects;
import java.util.Optional;

/**
 * A warning that stands at the step where it matters. Its words stand in the table of {@code
 * schedules.caution}; nothing decides by them.
 *
 * @param code short stable name in kebab case, the same wherever this caution is given: "oily-rags"
 * @param name what it is called where it has been told in full before
 * @param severity how bad it can get
 * @param what what can happen and why, in plain words
 * @param measure what to do about it; defers to the label, the safety data sheet or local codes
 *     where those decide
 * @param from where the advice comes from
 * @param step the one coat or glue-up it is true of; empty if of the work as a whole
 * @param again whether a plan has told it in full at an earlier step
 */
public record Caution(
    String code,
    String name,
    Severity severity,
    Message what,
    Message measure,
    Provenance from,
    Optional<StepId> step,
    boolean again) {
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
    Objects.requireNonNull(code, "code");
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(severity, "severity");
    Objects.requireNonNull(what, "what");
    Objects.requireNonNull(measure, "measure");
    Objects.requireNonNull(from, "from");
    Objects.requireNonNull(step, "step");
  }

  /** The same caution, true of this step. */
  public Caution at(StepId step) {
    return new Caution(code, name, severity, what, measure, from, Optional.of(step), again);
  }

  /** The same caution where a plan has told it before. */
  public Caution toldBefore() {
    return new Caution(code, name, severity, what, measure, from, step, true);
  }
}
