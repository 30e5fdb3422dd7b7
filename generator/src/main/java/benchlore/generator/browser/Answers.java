package benchlore.generator.browser;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.Figure;
import benchlore.schedules.answer.Line;
import benchlore.schedules.answer.Note;
import benchlore.schedules.answer.Provenance;
import benchlore.schedules.answer.Quantity;
import java.util.function.Function;

/** Writes what every answer is made of: the value, working and cautions, or the reasons. */
final class Answers {
  private Answers() {}

  /** Reads a request, has it answered and writes the answer; a broken request is told as such. */
  static <T> String text(String json, Function<Asked, Answer<T>> plan, JsonWriter.Part<T> value) {
    JsonWriter out = new JsonWriter();
    Answer<T> answer;
    try {
      answer = plan.apply(Asked.of(json));
    } catch (IllegalArgumentException e) {
      return out.open("").flag("given", false).text("broken", e.getMessage()).close().text();
    }
    out.open("");
    if (answer instanceof Answer.Given<T> given) {
      out.flag("given", true)
          .group("value", given.value(), value)
          .list("working", given.working(), Answers::line)
          .list("cautions", given.cautions(), Answers::caution);
    } else if (answer instanceof Answer.Refused<T> refused) {
      out.flag("given", false)
          .list(
              "reasons",
              refused.reasons(),
              (w, reason) ->
                  w.open("")
                      .text("input", reason.input())
                      .group("problem", reason.problem(), Answers::note)
                      .group("remedy", reason.remedy(), Answers::note)
                      .close());
    }
    return out.fingerprint().close().text();
  }

  static void line(JsonWriter out, Line line) {
    out.open("")
        .group("result", line.result(), Answers::figure)
        .text("formula", line.formula())
        .list("inputs", line.inputs(), (w, figure) -> w.group("", figure, Answers::figure))
        .group("rule", line.rule(), Answers::provenance)
        .close();
  }

  private static void figure(JsonWriter out, Figure figure) {
    out.text("name", figure.name());
    quantity(out, figure.quantity());
    out.group("from", figure.from(), Answers::provenance);
  }

  private static void provenance(JsonWriter out, Provenance from) {
    out.word("kind", from.kind()).text("title", from.title()).text("where", from.where());
  }

  static void quantity(JsonWriter out, Quantity quantity) {
    out.number("value", quantity.value()).word("unit", quantity.unit());
  }

  static void note(JsonWriter out, Note note) {
    out.text("pattern", note.pattern())
        .list("quantities", note.quantities(), (w, q) -> w.group("", q, Answers::quantity));
  }

  static void caution(JsonWriter out, Caution caution) {
    out.open("")
        .text("code", caution.code())
        .word("severity", caution.severity())
        .group("what", caution.what(), Answers::note)
        .group("measure", caution.measure(), Answers::note)
        .close();
  }
}
