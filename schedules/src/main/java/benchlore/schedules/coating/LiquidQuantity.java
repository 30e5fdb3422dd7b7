package benchlore.schedules.coating;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.Checks;
import benchlore.schedules.answer.QuantityKey;
import benchlore.schedules.answer.WorkingLine;
import benchlore.schedules.caution.CoatingRows;
import benchlore.schedules.quantity.Figure;
import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;
import java.util.List;

/**
 * Spreading rate and liquid.
 *
 * <pre>
 * spreading rate (m2/L) = 10 x solids % / dry film (um)      theoretical, nothing lost
 * liquid = area x coats / (spreading rate x transfer efficiency)
 * area = face (x 2 for both faces) + edges
 * </pre>
 *
 * <p>Exact for a smooth surface that takes up nothing; bare wood soaks up more on the first coat,
 * and no maker states by how much. Source: coatings training sheet, Spreading Rate.
 */
final class LiquidQuantity {
  private static final Provenance RULE =
      Provenance.source("Coatings training sheet, Spreading Rate", "page 1");
  // 10 x % / um is m2 a litre; a thousand litres to the cubic metre.
  private static final double PER_CUBIC_METRE = 10_000;

  private static final Caution SOAKS = CoatingRows.FIRST_COAT_SOAKS.caution();

  private LiquidQuantity() {}

  static Answer<Quantity> plan(QuantityRequest request) {
    Checks checks = new Checks();
    FinishChecks.check(checks, request.finish());
    check(checks, request);
    if (!checks.isValid()) {
      return Answer.refuse(checks.refusals());
    }
    SourcedRange transfer = request.landing();
    double rate = spreadingRate(request);
    double spread = rate * transfer.low();
    double total = request.area().totalSquareMetre();
    double liquid = total * request.coats() / spread;
    return Answer.of(
        Quantity.of(liquid, Unit.CUBIC_METRE_LIQUID),
        List.of(area(request), rate(request, rate), liquid(request, transfer, rate, liquid)),
        List.of(SOAKS));
  }

  static void check(Checks checks, QuantityRequest request) {
    CoatedArea area = request.area();
    checks.within("faceSquareMetre", area.faceSquareMetre(), 0, 1000, Unit.SQUARE_METRE);
    checks.within("edgeSquareMetre", area.edgeSquareMetre(), 0, 1000, Unit.SQUARE_METRE);
    checks.require(
        !(area.totalSquareMetre() <= 0),
        "area",
        "There is nothing to coat.",
        "Give the size of at least one piece.");
    checks.within("coats", request.coats(), 1, 50, Unit.COUNT);
    checks.within("transfer", request.transfer().orElse(1), 0.05, 1, Unit.RATIO);
    checks.within("wetFilmMicron", request.wetFilmMicron(), 1, 1000, Unit.MICRON);
    checks.require(
        request.finish().use().methods().contains(request.method()),
        "method",
        "This finish is not made to go on that way.",
        "Choose one of the ways its label names.");
  }

  private static double spreadingRate(QuantityRequest request) {
    double dry = FilmThickness.dryMicron(request.finish(), request.wetFilmMicron());
    return request.finish().liquid().solidsByVolume().mid() * PER_CUBIC_METRE / dry;
  }

  private static WorkingLine area(QuantityRequest request) {
    CoatedArea area = request.area();
    return new WorkingLine(
        QuantityKey.AREA_TO_COAT,
        Figure.computed("area to coat", area.totalSquareMetre(), Unit.SQUARE_METRE),
        area.bothFaces() ? "area = 2 x face + edges" : "area = face + edges",
        List.of(
            Figure.input("face", area.faceSquareMetre(), Unit.SQUARE_METRE),
            Figure.input("edges", area.edgeSquareMetre(), Unit.SQUARE_METRE)),
        Provenance.commonPractice("every wetted surface counts"));
  }

  private static WorkingLine rate(QuantityRequest request, double rate) {
    SourcedRange solids = request.finish().liquid().solidsByVolume();
    double dry = FilmThickness.dryMicron(request.finish(), request.wetFilmMicron());
    return new WorkingLine(
        QuantityKey.THEORETICAL_SPREADING_RATE,
        Figure.computed("theoretical spreading rate", rate, Unit.SQUARE_METRE_PER_CUBIC_METRE),
        "m2 per litre = 10 x solids by volume % / dry film in um",
        List.of(
            Figure.of("solids by volume", solids.mid(), Unit.PERCENT, solids.from()),
            Figure.computed("dry film of one coat", dry, Unit.MICRON)),
        RULE);
  }

  private static WorkingLine liquid(
      QuantityRequest request, SourcedRange transfer, double rate, double liquid) {
    return new WorkingLine(
        QuantityKey.LIQUID_FINISH,
        Figure.computed("liquid", liquid, Unit.CUBIC_METRE_LIQUID),
        "liquid = area x coats / (spreading rate x transfer efficiency)",
        List.of(
            Figure.computed("area", request.area().totalSquareMetre(), Unit.SQUARE_METRE),
            Figure.input("coats", request.coats(), Unit.COUNT),
            Figure.computed("spreading rate", rate, Unit.SQUARE_METRE_PER_CUBIC_METRE),
            Figure.of("transfer efficiency", transfer.low(), Unit.RATIO, transfer.from())),
        RULE);
  }
}
