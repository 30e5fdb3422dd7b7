package benchlore.schedules.cutting;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.Checks;
import benchlore.schedules.answer.QuantityKey;
import benchlore.schedules.answer.WorkingLine;
import benchlore.schedules.caution.CuttingRows;
import benchlore.schedules.quantity.Figure;
import benchlore.schedules.quantity.Numeric;
import benchlore.schedules.quantity.Unit;
import java.util.ArrayList;
import java.util.List;

/**
 * Flattening by parallel strokes.
 *
 * <pre>
 * strokes = 1 + (across - diameter) / (diameter x (1 - overlap)), rounded up; 1 if the bit covers it
 * path of a layer = strokes x length + (strokes - 1) x step;  layers = depth / layer, rounded up
 * </pre>
 *
 * <p>Geometry of the trade. The centre runs the full length, so that each end is cut across the
 * bit's whole width; the outer strokes just reach the edges. A bit out of square leaves ridges that
 * more overlap makes smaller, not none.
 */
final class SurfacingPlan {
  private final SurfacingRequest request;

  SurfacingPlan(SurfacingRequest request) {
    this.request = request;
  }

  Answer<Surfacing> plan() {
    Checks checks = check();
    if (!checks.isValid()) {
      return Answer.refuse(checks.refusals());
    }
    double diameter = request.bitDiameterMetre();
    double rest = Math.max(0, request.acrossMetre() - diameter);
    double most = diameter * (1 - request.overlapPercent() / 100);
    int steps = Numeric.ceil(rest / most);
    double step = steps == 0 ? 0 : Math.min(most, rest / steps);
    int strokes = steps + 1;
    double layer = strokes * request.lengthMetre() + steps * step;
    int layers = Math.max(1, Numeric.ceil(request.removeMetre() / request.passMetre()));
    double path = layer * layers;
    Surfacing surfacing =
        new Surfacing(
            strokes,
            step,
            layers,
            Math.min(request.passMetre(), request.removeMetre() / layers),
            path,
            path / request.feedMetrePerSecond(),
            BitSpeeds.highestRpm(diameter));
    return Answer.of(surfacing, working(surfacing), cautions());
  }

  private Checks check() {
    return new Checks()
        .within("lengthMetre", request.lengthMetre(), 0.05, 4, Unit.METRE)
        .within("acrossMetre", request.acrossMetre(), 0.05, 4, Unit.METRE)
        .within(
            "bitDiameterMetre",
            request.bitDiameterMetre(),
            0.003,
            BitSpeeds.MOST_DIAMETER_METRE,
            Unit.METRE)
        .within("overlapPercent", request.overlapPercent(), 5, 90, Unit.PERCENT)
        .within("removeMetre", request.removeMetre(), 0.0001, 0.02, Unit.METRE)
        .within("passMetre", request.passMetre(), 0.0001, 0.005, Unit.METRE)
        .within(
            "feedMetrePerSecond", request.feedMetrePerSecond(), 0.001, 2, Unit.METRE_PER_SECOND);
  }

  private List<WorkingLine> working(Surfacing surfacing) {
    List<WorkingLine> lines = new ArrayList<>();
    lines.add(
        new WorkingLine(
            QuantityKey.SURFACING_STROKES,
            Figure.computed("strokes", surfacing.strokes(), Unit.COUNT),
            "strokes = 1 + (across - diameter) / (diameter x (1 - overlap)), rounded up",
            List.of(
                Figure.input("across", request.acrossMetre(), Unit.METRE),
                Figure.input("bit diameter", request.bitDiameterMetre(), Unit.METRE),
                Figure.input("overlap", request.overlapPercent(), Unit.PERCENT)),
            CuttingSources.SURFACING));
    lines.add(
        new WorkingLine(
            QuantityKey.SURFACING_LAYERS,
            Figure.computed("layers", surfacing.layers(), Unit.COUNT),
            "layers = depth / layer, rounded up",
            List.of(
                Figure.input("depth", request.removeMetre(), Unit.METRE),
                Figure.input("most in a layer", request.passMetre(), Unit.METRE)),
            CuttingSources.SURFACING));
    lines.add(
        new WorkingLine(
            QuantityKey.SURFACING_TIME,
            Figure.computed("time", surfacing.seconds(), Unit.SECOND),
            "time = layers x (strokes x length + (strokes - 1) x step) / feed",
            List.of(
                Figure.input("length", request.lengthMetre(), Unit.METRE),
                Figure.computed("step", surfacing.stepMetre(), Unit.METRE),
                Figure.computed("path", surfacing.pathMetre(), Unit.METRE),
                Figure.input("feed", request.feedMetrePerSecond(), Unit.METRE_PER_SECOND)),
            CuttingSources.SURFACING));
    return lines;
  }

  private static List<Caution> cautions() {
    return List.of(CuttingRows.HIDDEN_SCREWS.caution(), CuttingRows.SURFACING_DUST.caution());
  }
}
