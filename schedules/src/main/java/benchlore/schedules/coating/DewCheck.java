package benchlore.schedules.coating;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.Checks;
import benchlore.schedules.answer.QuantityKey;
import benchlore.schedules.answer.WorkingLine;
import benchlore.schedules.caution.CoatingRows;
import benchlore.schedules.quantity.Figure;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;
import benchlore.schedules.room.Psychrometry;
import java.util.List;

/** The 3 C rule for a measured surface. */
final class DewCheck {
  private DewCheck() {}

  static Answer<DewMargin> plan(DewRequest request) {
    Checks checks =
        new Checks()
            .within("airCelsius", request.airCelsius(), -20, 50, Unit.CELSIUS)
            .within("humidityPercent", request.humidityPercent(), 1, 100, Unit.PERCENT)
            .within("surfaceCelsius", request.surfaceCelsius(), -20, 60, Unit.CELSIUS);
    if (!checks.isValid()) {
      return Answer.refuse(checks.refusals());
    }
    double dew = Psychrometry.dewPointCelsius(request.airCelsius(), request.humidityPercent());
    double least = dew + WorkSurface.MARGIN.high();
    boolean sound = request.surfaceCelsius() >= least;
    DewMargin value = new DewMargin(dew, request.surfaceCelsius() - dew, least, sound);
    List<Caution> cautions = sound ? List.of() : List.of(caution(value));
    return Answer.of(value, List.of(line(request, value)), cautions);
  }

  private static Caution caution(DewMargin value) {
    return CoatingRows.DEW_BEFORE_COATING.caution(
        List.of(Quantity.of(value.marginCelsius(), Unit.CELSIUS_DIFFERENCE)),
        List.of(Quantity.of(value.leastSurfaceCelsius(), Unit.CELSIUS)));
  }

  private static WorkingLine line(DewRequest request, DewMargin value) {
    SourcedRange margin = WorkSurface.MARGIN;
    return new WorkingLine(
        QuantityKey.SURFACE_ABOVE_DEW_POINT,
        Figure.computed("surface above dew point", value.marginCelsius(), Unit.CELSIUS_DIFFERENCE),
        "margin = surface - dew point; dew point = c g / (b - g), g = ln(RH/100) + b T / (c + T)",
        List.of(
            Figure.input("air", request.airCelsius(), Unit.CELSIUS),
            Figure.input("humidity", request.humidityPercent(), Unit.PERCENT),
            Figure.input("surface", request.surfaceCelsius(), Unit.CELSIUS),
            Figure.of("least margin", margin.high(), margin.unit(), margin.from())),
        margin.from());
  }
}
