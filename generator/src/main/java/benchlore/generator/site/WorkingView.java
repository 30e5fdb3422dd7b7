package benchlore.generator.site;

import benchlore.generator.page.PlanModel;
import benchlore.generator.units.Display;
import benchlore.schedules.answer.WorkingLine;
import benchlore.schedules.quantity.Figure;
import benchlore.schedules.quantity.Provenance;

/** Shows how a figure came about: result, formula, what went in and where it is from. */
final class WorkingView {
  private WorkingView() {}

  static PlanModel.Working shown(WorkingLine line) {
    return new PlanModel.Working(
        line.result().name(),
        Display.html(line.result().quantity()),
        line.formula(),
        from(line.rule()),
        line.inputs().stream().map(WorkingView::input).toList());
  }

  private static PlanModel.Input input(Figure figure) {
    return new PlanModel.Input(figure.name(), Display.html(figure.quantity()), from(figure.from()));
  }

  private static String from(Provenance from) {
    String words = Labels.trust(from.kind());
    String note = from.title().isEmpty() ? "" : from.title();
    String where = from.where().isEmpty() ? "" : ", " + from.where();
    return from.kind() == Provenance.Kind.SOURCE
        ? note + where
        : words + (note.isEmpty() ? "" : " (" + note + ")");
  }
}
