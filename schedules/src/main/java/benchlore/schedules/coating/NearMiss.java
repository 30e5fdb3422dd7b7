package benchlore.schedules.coating;

import benchlore.schedules.answer.Message;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.quantity.Unit;
import benchlore.schedules.time.Interval;
import benchlore.schedules.time.Moment;
import java.util.Objects;
import java.util.Optional;

/**
 * A session that the next coat misses by minutes: who stays that much longer has it on days sooner.
 * No plan takes it by itself, since the shop's hours are the user's; it is offered.
 *
 * @param start when the coat would go on
 * @param longerSeconds how much longer the session would have to be, above 0 to half an hour
 * @param soonerSeconds how much sooner than planned, at least {@value #WORTH_SECOND} s
 */
public record NearMiss(Moment start, double longerSeconds, double soonerSeconds) {
  /** What counts as minutes. */
  static final double MOST_LONGER_SECOND = 1800;

  /** What is worth being told. */
  static final double WORTH_SECOND = 6 * 3600;

  /** Refuses null. */
  public NearMiss {
    Objects.requireNonNull(start, "start");
  }

  /**
   * Looks between the moment a coat may be worked on and the next one's planned start.
   *
   * @param job the coats and the shop's hours
   * @param before a coat
   * @param planned the coat after it
   * @return the first such session whose air passes, with the recoat window still open
   */
  public static Optional<NearMiss> of(CoatingRequest job, CoatStep before, CoatStep planned) {
    DryingRequest coat = job.coat(before.start());
    boolean scuffed = planned.scuff() != ScuffReason.NONE;
    Moment opens = before.drying().moment(Stage.RECOAT_OPENS).orElse(before.start());
    Moment ready =
        scuffed ? opens.orLater(before.drying().moment(Stage.SAND).orElse(opens)) : opens;
    CoatSessions sessions = job.sessions();
    double scuff = scuffed ? sessions.scuff().seconds() : 0;
    for (Moment day = ready.startOfDay(); day.isBefore(planned.start()); day = day.plusDays(1)) {
      for (Interval open : sessions.week().hours(day.date())) {
        Moment start = open.start().orLater(ready.upToQuarterHour()).plusSeconds(scuff);
        double longer = open.end().secondsUntil(start.plusSeconds(sessions.coat().seconds()));
        double sooner = start.secondsUntil(planned.start());
        boolean near = longer > 0 && longer <= MOST_LONGER_SECOND && sooner >= WORTH_SECOND;
        if (near && within(before, start) && passes(coat.withStart(start))) {
          return Optional.of(new NearMiss(start, longer, sooner));
        }
      }
    }
    return Optional.empty();
  }

  /** The offer, told at the coat that goes on later for want of it. */
  public Message offer() {
    int days = start.date().daysUntil(start.plusSeconds(soonerSeconds).date());
    String when =
        days == 0 ? "earlier that day" : days == 1 ? "the day before" : days + " days before";
    return Message.of(
        "Stay {0} longer " + when + " and it goes on at " + start.clock() + ", {1} sooner.",
        Quantity.of(longerSeconds, Unit.SECOND),
        Quantity.of(soonerSeconds, Unit.SECOND));
  }

  private static boolean within(CoatStep before, Moment start) {
    return before
        .drying()
        .moment(Stage.RECOAT_CLOSES)
        .map(closes -> !start.isAfter(closes))
        .orElse(true);
  }

  private static boolean passes(DryingRequest coat) {
    return Drying.wetTimes(coat).filter(times -> WetHours.passable(coat, times)).isPresent();
  }
}
