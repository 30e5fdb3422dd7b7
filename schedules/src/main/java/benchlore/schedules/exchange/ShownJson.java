package benchlore.schedules.exchange;

import benchlore.schedules.answer.Message;
import benchlore.schedules.present.DayMark;
import benchlore.schedules.present.DayRow;
import benchlore.schedules.present.FigureText;
import benchlore.schedules.present.PlanCalendar;
import benchlore.schedules.present.UnitSystem;
import benchlore.schedules.project.ProjectPlan;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.quantity.Unit;
import benchlore.schedules.time.Interval;
import java.util.List;

/** What a page shows: sentences, days to draw, the calendar of a plan. */
final class ShownJson {
  private ShownJson() {}

  static List<FigureText.Part> sentence(RequestReader f) {
    return FigureText.Part.of(
        new Message(f.text("pattern"), f.list("quantities", ShownJson::quantity)));
  }

  static void part(AnswerWriter out, FigureText.Part part) {
    out.text("metric", part.metric())
        .text("imperial", part.imperial())
        .flag("isFigure", part.isFigure());
  }

  static Quantity quantity(RequestReader f) {
    return Quantity.of(f.number("value"), f.word("unit", Unit.values()));
  }

  static DayMark mark(RequestReader f) {
    return new DayMark(
        f.word("kind", DayMark.Kind.values()),
        new Interval(f.moment("from"), f.moment("to")),
        f.has("label") ? f.text("label") : "",
        f.optional("figure", ShownJson::quantity));
  }

  static void row(AnswerWriter out, DayRow row) {
    out.day("date", row.date())
        .number("daysPassed", row.daysPassed())
        .list("bars", row.bars(), ShownJson::bar);
  }

  private static void bar(AnswerWriter out, DayRow.Bar bar) {
    out.word("kind", bar.kind())
        .number("fromMinute", bar.fromMinute())
        .number("toMinute", bar.toMinute())
        .text("label", bar.label())
        .optional("figure", bar.figure(), AnswerJson::quantity);
  }

  static String calendar(RequestReader f, ProjectPlan plan) {
    PlanCalendar.Head head =
        new PlanCalendar.Head(
            f.text("id"),
            f.text("title"),
            f.has("stamp") ? f.moment("stamp") : plan.start(),
            f.word("system", UnitSystem.values()));
    return PlanCalendar.render(head, plan);
  }
}
