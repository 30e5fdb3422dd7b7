package benchlore.schedules.movement;

import benchlore.schedules.answer.QuantityKey;
import benchlore.schedules.answer.WorkingLine;
import benchlore.schedules.movement.FitSchedule.Settling;
import benchlore.schedules.quantity.Figure;
import benchlore.schedules.quantity.Numeric;
import benchlore.schedules.quantity.Unit;
import java.util.List;

/**
 * How long boards lie before they are cut to size.
 *
 * <pre>
 * time = tau x (thickness / 25 mm)^2 x ln(difference / 1 point);  0 within 1 point
 * tau = 5 to 15 days for bare boards of 25 mm on stickers in moving air near 20 deg C
 * </pre>
 *
 * <p>From memory: the shape is first-order drying with the square of thickness, the days span what
 * shops report (one to four weeks for 25 mm). Dense, oily or sealed wood is slower, cold air much
 * slower, a tight stack may never settle. A moisture meter decides.
 */
final class SettlingRule {
  private static final double DAY = 86_400;

  private SettlingRule() {}

  static Settling settling(FitRequest request, double targetPercent) {
    double difference = Math.abs(request.moisturePercent() - targetPercent);
    if (difference <= FitFigures.SETTLED_POINTS) {
      return new Settling(0, 0);
    }
    double ratio = request.thicknessMetre() / FitFigures.SETTLE_THICKNESS_METRE;
    double log = Numeric.log(difference / FitFigures.SETTLED_POINTS);
    double shape = ratio * ratio * log * DAY;
    return new Settling(shape * FitFigures.SETTLE_LOW_DAYS, shape * FitFigures.SETTLE_HIGH_DAYS);
  }

  static WorkingLine line(FitRequest request, double targetPercent, Settling settling) {
    return new WorkingLine(
        QuantityKey.LONGEST_TIME_TO_SETTLE,
        Figure.computed("longest time to settle", settling.highSecond(), Unit.SECOND),
        "time = tau x (thickness / 25 mm)^2 x ln(difference / 1 point)",
        List.of(
            Figure.of(
                "tau, slow end",
                FitFigures.SETTLE_HIGH_DAYS * DAY,
                Unit.SECOND,
                FitSources.SETTLING),
            Figure.input("thickness", request.thicknessMetre(), Unit.METRE),
            Figure.input("moisture now", request.moisturePercent(), Unit.PERCENT),
            Figure.computed("moisture of the shop", targetPercent, Unit.PERCENT)),
        FitSources.SETTLING);
  }
}
