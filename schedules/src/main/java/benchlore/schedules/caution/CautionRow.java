package benchlore.schedules.caution;

import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.Message;
import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.Quantity;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A caution of the table. In its words {@code {0}}, {@code {1}} … stand for quantities, counted
 * apart in {@code what} and {@code measure}; a word in braces, {@code {joint}}, stands for a name
 * or for a sentence that is not always there.
 *
 * @param code short stable name in kebab case, unique in the table: "oily-rags"
 * @param name what it is called where it has been told in full before: "rags heat up by themselves"
 * @param severity how bad it can get
 * @param what what can happen and why, in plain words
 * @param measure what to do about it; defers to the label, the safety data sheet or local codes
 *     where those decide
 * @param from where the advice comes from
 */
public record CautionRow(
    String code,
    String name,
    Caution.Severity severity,
    String what,
    String measure,
    Provenance from) {
  /** Refuses nulls. */
  public CautionRow {
    Objects.requireNonNull(code, "code");
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(severity, "severity");
    Objects.requireNonNull(what, "what");
    Objects.requireNonNull(measure, "measure");
    Objects.requireNonNull(from, "from");
  }

  /** A row that is a rule of the trade with no single source. */
  static CautionRow practice(
      String code, String name, Caution.Severity severity, String what, String measure) {
    return new CautionRow(code, name, severity, what, measure, Provenance.commonPractice(""));
  }

  /** A row that is believed right and not checked against a page. */
  static CautionRow memory(
      String code, String name, Caution.Severity severity, String what, String measure) {
    return new CautionRow(code, name, severity, what, measure, Provenance.fromMemory(""));
  }

  /**
   * This row with words in the place of a name.
   *
   * @param place the name in the row's words, without braces
   * @param words what to put there; may be empty
   */
  public CautionRow with(String place, String words) {
    String hole = "{" + place + "}";
    return new CautionRow(
        code, name, severity, what.replace(hole, words), measure.replace(hole, words), from);
  }

  /** The caution, of a row without places for quantities. */
  public Caution caution() {
    return caution(List.of(), List.of());
  }

  /** The caution, of a row whose places for quantities are all in what can happen. */
  public Caution caution(Quantity... what) {
    return caution(List.of(what), List.of());
  }

  /**
   * The caution with its quantities.
   *
   * @param what those in what can happen, in order
   * @param measure those in what to do, in order
   */
  public Caution caution(List<Quantity> what, List<Quantity> measure) {
    return new Caution(
        code,
        name,
        severity,
        new Message(this.what, what),
        new Message(this.measure, measure),
        from,
        Optional.empty(),
        false);
  }
}
