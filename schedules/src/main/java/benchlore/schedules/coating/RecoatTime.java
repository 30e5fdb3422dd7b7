package benchlore.schedules.coating;

import benchlore.schedules.material.CoatBond;
import benchlore.schedules.material.Finish;
import benchlore.schedules.material.FinishFamily;
import benchlore.schedules.time.Moment;
import java.util.Optional;

/**
 * When the next coat may go on, and whether the last one is sanded first.
 *
 * <pre>
 * melts in, or any time    from the opening of the window
 * within window            from the opening; past the closing it must be scuffed, so not before it sands
 * scuff always             not before it sands
 * </pre>
 *
 * <p>A finish that bonds within a window but states no closing is scuffed: the safe side. A
 * catalysed lacquer past its window wrinkles under a new coat until it is fully cured, so it waits
 * for that (common practice; makers differ on the hours). Waterborne first coats are sanded because
 * they raise the grain.
 *
 * @param start when the coat goes on
 * @param scuff why the coat under it is sanded, if it is
 */
record RecoatTime(Moment start, ScuffReason scuff) {
  /**
   * What is done for the next coat.
   *
   * @param scuffed whether the coat under it is scuffed
   * @param resume no work before this moment
   */
  record Begun(boolean scuffed, Optional<Moment> resume) {
    Moment after(Moment moment) {
      return resume.isPresent() && resume.get().isAfter(moment) ? resume.get() : moment;
    }
  }

  private static final int HOURS_TO_LOOK = 24 * 14;

  /** How long it is worth waiting for air without a caution, before the best there is will do. */
  private static final int SOUND_HOURS = 24 * 8;

  /**
   * The first moment the next coat can go on in shop hours and in air it can stand; rather inside
   * the recoat window than outside, and rather in air that breaks no limit while the film is wet.
   *
   * @param number the next coat's number, 2 or more
   * @param last the request of the coat before
   * @param times how that coat dries
   * @param sessions the shop's hours and how long a coat takes
   * @param begun what is done for it already
   * @return empty if there is no such moment within 14 days of the coat being ready
   */
  static Optional<RecoatTime> after(
      int number, DryingRequest last, DryingTimes times, CoatSessions sessions, Begun begun) {
    Finish finish = last.finish();
    ScuffReason scuff = planned(number, finish, times);
    if (scuff != ScuffReason.NONE) {
      return first(begun.after(sands(times)), !begun.scuffed(), last, sessions)
          .map(s -> new RecoatTime(s, scuff));
    }
    Optional<Moment> start = first(begun.after(opens(times)), false, last, sessions);
    if (start.isPresent() && missed(finish, times, start.get())) {
      return first(begun.after(afterMiss(finish, times)), !begun.scuffed(), last, sessions)
          .map(s -> new RecoatTime(s, ScuffReason.WINDOW_MISSED));
    }
    return start.map(s -> new RecoatTime(s, scuff));
  }

  /**
   * The first moment from {@code ready} on for a coat like this one: the first in air that breaks
   * no limit while the film is wet, if there is one within 8 days; else the first in air it can
   * stand at all.
   */
  static Optional<Moment> first(
      Moment ready, boolean scuffed, DryingRequest like, CoatSessions sessions) {
    Optional<Moment> passable = Optional.empty();
    Optional<Moment> next = sessions.first(ready, scuffed);
    Moment last = ready.plusHours(HOURS_TO_LOOK);
    Moment worthWaiting = ready.plusHours(SOUND_HOURS);
    while (next.isPresent() && !next.get().isAfter(last)) {
      Moment moment = next.get();
      if (moment.isAfter(worthWaiting) && passable.isPresent()) {
        return passable;
      }
      DryingRequest coat = like.withStart(moment);
      Optional<DryingTimes> times =
          FirstMoment.fine(coat) ? Drying.wetTimes(coat) : Optional.empty();
      if (times.isPresent()) {
        if (WetHours.sound(coat, times.get())) {
          return next;
        }
        boolean stands = !WetHours.tooCold(coat, times.get());
        passable = passable.isEmpty() && stands ? next : passable;
      }
      Moment from = scuffed ? moment.plusSeconds(-sessions.scuff().seconds()) : moment;
      next = sessions.first(from.startOfHour().plusHours(1), scuffed);
    }
    return passable;
  }

  /** A coat that is on: scuffed where it had to be, past its window where it was. */
  static RecoatTime laid(int number, Finish finish, DryingTimes times, Moment start) {
    ScuffReason planned = planned(number, finish, times);
    boolean missed = planned == ScuffReason.NONE && missed(finish, times, start);
    return new RecoatTime(start, missed ? ScuffReason.WINDOW_MISSED : planned);
  }

  private static ScuffReason planned(int number, Finish finish, DryingTimes times) {
    boolean always = finish.film().bond() == CoatBond.SCUFF_ALWAYS;
    boolean unknown = finish.film().bond() == CoatBond.WITHIN_WINDOW && !times.windowKnown();
    if (always || unknown) {
      return ScuffReason.BOND;
    }
    return finish.use().raisesGrain() && number == 2 ? ScuffReason.RAISED_GRAIN : ScuffReason.NONE;
  }

  private static boolean missed(Finish finish, DryingTimes times, Moment start) {
    Optional<Moment> closes = times.moment(Stage.RECOAT_CLOSES);
    return finish.film().bond() == CoatBond.WITHIN_WINDOW
        && closes.isPresent()
        && start.isAfter(closes.get());
  }

  private static Moment afterMiss(Finish finish, DryingTimes times) {
    boolean wrinkles = finish.family() == FinishFamily.CATALYSED_LACQUER;
    return wrinkles ? times.moment(Stage.FULL_CURE).orElse(sands(times)) : sands(times);
  }

  private static Moment opens(DryingTimes times) {
    return times.moment(Stage.RECOAT_OPENS).orElseThrow();
  }

  private static Moment sands(DryingTimes times) {
    Moment opens = opens(times);
    Moment sands = times.moment(Stage.SAND).orElse(opens);
    return opens.orLater(sands);
  }
}
