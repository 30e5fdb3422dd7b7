package benchlore.schedules.wood;

import benchlore.schedules.answer.Figure;
import benchlore.schedules.answer.Line;
import benchlore.schedules.answer.Unit;
import benchlore.schedules.numeric.Numeric;
import benchlore.schedules.wood.FitSchedule.Settling;
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
    if (difference <= FitLimits.SETTLED_POINTS) {
      return new Settling(0, 0);
    }
    double ratio = request.thicknessMetre() / FitLimits.SETTLE_THICKNESS_METRE;
    double log = Numeric.log(difference / FitLimits.SETTLED_POINTS);
    double shape = ratio * ratio * log * DAY;
    return new Settling(shape * FitLimits.SETTLE_LOW_DAYS, shape * FitLimits.SETTLE_HIGH_DAYS);
  }

  static Line line(FitRequest request, double targetPercent, Settling settling) {
    return new Line(
        Figure.computed("longest time to settle", settling.highSecond(), Unit.SECOND),
        "time = tau x (thickness / 25 mm)^2 x ln(difference / 1 point)",
        List.of(
            Figure.of(
                "tau, slow end",
                FitLimits.SETTLE_HIGH_DAYS * DAY,
                Unit.SECOND,
                WoodSources.SETTLING),
            Figure.input("thickness", request.thicknessMetre(), Unit.METRE),
            Figure.input("moisture now", request.moisturePercent(), Unit.PERCENT),
            Figure.computed("moisture of the shop", targetPercent, Unit.PERCENT)),
        WoodSources.SETTLING);
  }
}
