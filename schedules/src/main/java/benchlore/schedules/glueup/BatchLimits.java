package benchlore.schedules.glueup;

import benchlore.schedules.glueup.GlueUpSchedule.Assembly;
import benchlore.schedules.material.Adhesive;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.room.EquivalentAge;
import benchlore.schedules.room.EquivalentAge.Rate;
import benchlore.schedules.time.Moment;

/**
 * How long a batch begun at a given moment may take: the label's shortest times on the room's
 * temperature curve.
 *
 * @param assembly open, closed and total time
 * @param potSecond within which a mixed adhesive must be spread; infinite if it is not mixed
 */
record BatchLimits(Assembly assembly, double potSecond) {
  /** The limits for a batch whose first spread is at {@code start}. */
  static BatchLimits at(GlueUpRequest request, Moment start) {
    Adhesive adhesive = request.adhesive();
    Rate rate = SettingRates.open(adhesive, request.wood());
    Rate potRate = SettingRates.pot(adhesive, request.wood());
    double wait = 0;
    double label = adhesive.times().openTime().low();
    if (adhesive.family() == Adhesive.Family.CONTACT) {
      // Its range is the window to join in: dry at the low end, still bonding at the high end.
      wait = adhesive.times().openTime().low();
      label = adhesive.times().openTime().high();
    }
    double open = seconds(request, start, label, rate);
    double closed = seconds(request, start, closedLabel(adhesive).low(), rate);
    double pot =
        adhesive
            .times()
            .potLife()
            .map(life -> seconds(request, start, life.low(), potRate))
            .orElse(Double.POSITIVE_INFINITY);
    return new BatchLimits(new Assembly(wait, open, closed, open + closed), pot);
  }

  /** The adhesive's closed time, else its open time again. */
  static SourcedRange closedLabel(Adhesive adhesive) {
    return adhesive
        .times()
        .closedTime()
        .orElseGet(
            () ->
                SourcedRange.of(
                    adhesive.times().openTime().low() * GlueUpFigures.CLOSED_TO_OPEN.low(),
                    adhesive.times().openTime().unit(),
                    GlueUpFigures.CLOSED_TO_OPEN.from()));
  }

  private static double seconds(GlueUpRequest request, Moment start, double label, Rate rate) {
    return EquivalentAge.secondsUntil(request.climate(), start, label, rate).orElse(label);
  }
}
