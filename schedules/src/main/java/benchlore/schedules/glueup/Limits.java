package benchlore.schedules.glueup;

import benchlore.schedules.answer.Datum;
import benchlore.schedules.glueup.GlueUpSchedule.Assembly;
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
record Limits(Assembly assembly, double potSecond) {
  /** The limits for a batch whose first spread is at {@code start}. */
  static Limits at(GlueUpRequest request, Moment start) {
    AdhesiveData adhesive = request.adhesive();
    Rate rate = Rates.open(adhesive, request.wood());
    double wait = 0;
    double label = adhesive.openTime().low();
    if (adhesive.family() == AdhesiveData.Family.CONTACT) {
      // Its range is the window to join in: dry at the low end, still bonding at the high end.
      wait = adhesive.openTime().low();
      label = adhesive.openTime().high();
    }
    double open = seconds(request, start, label, rate);
    double closed = seconds(request, start, closedLabel(adhesive).low(), rate);
    double pot =
        adhesive
            .potLife()
            .map(life -> seconds(request, start, life.low(), rate))
            .orElse(Double.POSITIVE_INFINITY);
    return new Limits(new Assembly(wait, open, closed, open + closed), pot);
  }

  /** The adhesive's closed time, else its open time again. */
  static Datum closedLabel(AdhesiveData adhesive) {
    return adhesive
        .closedTime()
        .orElseGet(
            () ->
                Datum.of(
                    adhesive.openTime().low() * Practice.CLOSED_TO_OPEN.low(),
                    adhesive.openTime().unit(),
                    Practice.CLOSED_TO_OPEN.from()));
  }

  private static double seconds(GlueUpRequest request, Moment start, double label, Rate rate) {
    return EquivalentAge.secondsUntil(request.climate(), start, label, rate).orElse(label);
  }
}
