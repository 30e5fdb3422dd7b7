package benchlore.schedules.answer;

import benchlore.schedules.quantity.Figure;
import benchlore.schedules.quantity.Provenance;
import java.util.List;
import java.util.Objects;

/**
 * One line of working: what was worked out, by which formula, from which figures.
 *
 * @param key which figure it is; several lines of an answer may share it: one a coat, joint or pass
 * @param result the figure worked out
 * @param formula the formula in plain symbols and words: "litres = area x coats x dry film /
 *     (solids x transfer)"
 * @param inputs the figures that went in, each with its provenance
 * @param rule where the formula itself comes from
 */
public record WorkingLine(
    QuantityKey key, Figure result, String formula, List<Figure> inputs, Provenance rule) {
  /** Copies the list; refuses nulls. */
  public WorkingLine {
    Objects.requireNonNull(key, "key");
    Objects.requireNonNull(result, "result");
    Objects.requireNonNull(formula, "formula");
    Objects.requireNonNull(rule, "rule");
    inputs = List.copyOf(inputs);
  }

  /** The same line with its result under another name. */
  public WorkingLine named(String name) {
    return new WorkingLine(
        key, new Figure(name, result.quantity(), result.from()), formula, inputs, rule);
  }
}
