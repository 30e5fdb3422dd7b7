package benchlore.schedules.exchange;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.Message;
import benchlore.schedules.answer.Refusal;
import benchlore.schedules.answer.StepId;
import benchlore.schedules.answer.WorkingLine;
import benchlore.schedules.quantity.Figure;
import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.quantity.SourcedRange;
import java.util.function.Function;

/** Writes what every answer is made of: the value, working and cautions, or the reasons. */
final class AnswerJson {
  private AnswerJson() {}

  /** Reads a request, has it answered and writes the answer; a broken request is told as such. */
  static <T> void answer(
      Node request,
      Sink sink,
      Function<RequestReader, Answer<T>> plan,
      AnswerWriter.Part<T> value) {
    Answer<T> answer;
    try {
      answer = plan.apply(RequestReader.of(request));
    } catch (IllegalArgumentException e) {
      new AnswerWriter(sink)
          .group("", e, (out, broken) -> out.flag("given", false).text("broken", told(broken)));
      return;
    }
    write(answer, sink, value);
  }

  private static String told(Exception broken) {
    return broken.getMessage() == null ? "the request can't be read" : broken.getMessage();
  }

  /** Writes an answer. */
  static <T> void write(Answer<T> answer, Sink sink, AnswerWriter.Part<T> value) {
    new AnswerWriter(sink).group("", answer, (out, a) -> answer(out, a, value));
  }

  private static <T> void answer(AnswerWriter out, Answer<T> answer, AnswerWriter.Part<T> value) {
    if (answer instanceof Answer.Given<T> given) {
      out.flag("given", true)
          .group("value", given.value(), value)
          .list("working", given.working(), AnswerJson::line)
          .list("cautions", given.cautions(), AnswerJson::caution);
    } else if (answer instanceof Answer.Refused<T> refused) {
      out.flag("given", false).list("reasons", refused.reasons(), AnswerJson::refusal);
    }
  }

  private static void refusal(AnswerWriter out, Refusal reason) {
    out.text("input", reason.input())
        .group("problem", reason.problem(), AnswerJson::note)
        .group("remedy", reason.remedy(), AnswerJson::note);
  }

  static void line(AnswerWriter out, WorkingLine line) {
    out.word("key", line.key())
        .group("result", line.result(), AnswerJson::figure)
        .text("formula", line.formula())
        .list("inputs", line.inputs(), AnswerJson::figure)
        .group("rule", line.rule(), AnswerJson::provenance);
  }

  private static void figure(AnswerWriter out, Figure figure) {
    out.text("name", figure.name())
        .group("quantity", figure.quantity(), AnswerJson::quantity)
        .group("from", figure.from(), AnswerJson::provenance);
  }

  static void provenance(AnswerWriter out, Provenance from) {
    out.word("kind", from.kind()).text("title", from.title()).text("where", from.where());
  }

  static void datum(AnswerWriter out, SourcedRange datum) {
    out.number("low", datum.low())
        .number("high", datum.high())
        .word("unit", datum.unit())
        .group("from", datum.from(), AnswerJson::provenance);
  }

  static void quantity(AnswerWriter out, Quantity quantity) {
    out.number("value", quantity.value()).word("unit", quantity.unit());
  }

  static void note(AnswerWriter out, Message note) {
    out.text("pattern", note.pattern()).list("quantities", note.quantities(), AnswerJson::quantity);
  }

  static void caution(AnswerWriter out, Caution caution) {
    out.text("code", caution.code())
        .text("name", caution.name())
        .word("severity", caution.severity())
        .group("what", caution.what(), AnswerJson::note)
        .group("measure", caution.measure(), AnswerJson::note)
        .group("from", caution.from(), AnswerJson::provenance)
        .optional("step", caution.step(), AnswerJson::step)
        .flag("again", caution.again());
  }

  static void step(AnswerWriter out, StepId step) {
    out.text("id", step.name()).word("task", step.task()).number("number", step.number());
  }
}
