package benchlore.generator.site;

import benchlore.generator.units.Display;
import benchlore.schedules.answer.WorkingLine;
import benchlore.schedules.quantity.Figure;
import benchlore.schedules.quantity.Provenance;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Shows how a figure came about: result, formula, what went in and where it is from. */
final class WorkingView {
  /** Lines for the template. */
  List<Map<String, Object>> of(List<WorkingLine> lines) {
    List<Map<String, Object>> list = new ArrayList<>();
    for (WorkingLine line : lines) {
      List<Map<String, String>> inputs = new ArrayList<>();
      for (Figure figure : line.inputs()) {
        inputs.add(
            Map.of(
                "name", figure.name(),
                "value", Display.html(figure.quantity()),
                "from", from(figure.from())));
      }
      list.add(
          Map.of(
              "name", line.result().name(),
              "value", Display.html(line.result().quantity()),
              "formula", line.formula(),
              "inputs", inputs,
              "rule", from(line.rule())));
    }
    return list;
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
