package benchlore.generator.json;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.Datum;
import benchlore.schedules.answer.Figure;
import benchlore.schedules.answer.Line;
import benchlore.schedules.answer.Note;
import benchlore.schedules.answer.Provenance;
import benchlore.schedules.answer.Quantity;
import benchlore.schedules.answer.Refusal;
import java.util.function.Function;

/** Writes what every answer is made of: the value, working and cautions, or the reasons. */
final class Answers {
  private Answers() {}

  /** Reads a request, has it answered and writes the answer; a broken request is told as such. */
  static <T> void answer(
      Node request, Sink sink, Function<Asked, Answer<T>> plan, Out.Part<T> value) {
    Answer<T> answer;
    try {
      answer = plan.apply(Asked.of(request));
    } catch (IllegalArgumentException e) {
      new Out(sink)
          .group("", e, (out, broken) -> out.flag("given", false).text("broken", told(broken)));
      return;
    }
    write(answer, sink, value);
  }

  private static String told(Exception broken) {
    return broken.getMessage() == null ? "the request can't be read" : broken.getMessage();
  }

  /** Writes an answer. */
  static <T> void write(Answer<T> answer, Sink sink, Out.Part<T> value) {
    new Out(sink).group("", answer, (out, a) -> answer(out, a, value));
  }

  private static <T> void answer(Out out, Answer<T> answer, Out.Part<T> value) {
    if (answer instanceof Answer.Given<T> given) {
      out.flag("given", true)
          .group("value", given.value(), value)
          .list("working", given.working(), Answers::line)
          .list("cautions", given.cautions(), Answers::caution);
    } else if (answer instanceof Answer.Refused<T> refused) {
      out.flag("given", false).list("reasons", refused.reasons(), Answers::refusal);
    }
  }

  private static void refusal(Out out, Refusal reason) {
    out.text("input", reason.input())
        .group("problem", reason.problem(), Answers::note)
        .group("remedy", reason.remedy(), Answers::note);
  }

  static void line(Out out, Line line) {
    out.group("result", line.result(), Answers::figure)
        .text("formula", line.formula())
        .list("inputs", line.inputs(), Answers::figure)
        .group("rule", line.rule(), Answers::provenance);
  }

  private static void figure(Out out, Figure figure) {
    out.text("name", figure.name())
        .group("quantity", figure.quantity(), Answers::quantity)
        .group("from", figure.from(), Answers::provenance);
  }

  static void provenance(Out out, Provenance from) {
    out.word("kind", from.kind()).text("title", from.title()).text("where", from.where());
  }

  static void datum(Out out, Datum datum) {
    out.number("low", datum.low())
        .number("high", datum.high())
        .word("unit", datum.unit())
        .group("from", datum.from(), Answers::provenance);
  }

  static void quantity(Out out, Quantity quantity) {
    out.number("value", quantity.value()).word("unit", quantity.unit());
  }

  static void note(Out out, Note note) {
    out.text("pattern", note.pattern()).list("quantities", note.quantities(), Answers::quantity);
  }

  static void caution(Out out, Caution caution) {
    out.text("code", caution.code())
        .word("severity", caution.severity())
        .group("what", caution.what(), Answers::note)
        .group("measure", caution.measure(), Answers::note);
  }
}
