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
 * while tacky, while wet   from the opening, before it is dry; past the closing, scuffed once it sands
 * within window            denibbed, so not before it sands; past the closing, scuffed all over
 * scuff always             not before it sands
 * </pre>
 *
 * <p>A catalysed lacquer past its window wrinkles under a new coat until it is fully cured, so it
 * waits for that (common practice; makers differ on the hours). Waterborne first coats are sanded
 * because they raise the grain.
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
    ScuffReason scuff = planned(number, finish);
    boolean sanded = scuff != ScuffReason.NONE;
    Moment ready = sanded ? sands(times) : opens(times);
    Optional<Moment> start = first(begun.after(ready), sanded && !begun.scuffed(), last, sessions);
    if (start.isEmpty() || !missed(finish, times, start.get())) {
      return start.map(s -> new RecoatTime(s, scuff));
    }
    Optional<Moment> later =
        sanded && !wrinkles(finish)
            ? start
            : first(begun.after(afterMiss(finish, times)), !begun.scuffed(), last, sessions);
    return later.map(s -> new RecoatTime(s, ScuffReason.WINDOW_MISSED));
  }

  /**
   * The moment from {@code ready} on for a coat like this one: the first in air that breaks no
   * limit while the film is wet, if there is one within 8 days; else, of those at which it passes
   * the gate until it is touch dry, the one after which least is amiss.
   */
  static Optional<Moment> first(
      Moment ready, boolean scuffed, DryingRequest like, CoatSessions sessions) {
    Optional<Moment> best = Optional.empty();
    int least = Integer.MAX_VALUE;
    Optional<Moment> next = sessions.first(ready, scuffed);
    Moment last = ready.plusHours(HOURS_TO_LOOK);
    Moment worthWaiting = ready.plusHours(SOUND_HOURS);
    while (next.isPresent() && !next.get().isAfter(last)) {
      Moment moment = next.get();
      if (moment.isAfter(worthWaiting) && best.isPresent()) {
        return best;
      }
      DryingRequest coat = like.withStart(moment);
      Optional<DryingTimes> times = Drying.wetTimes(coat);
      if (times.isPresent() && WetHours.passable(coat, times.get())) {
        int amiss = WetHours.amiss(coat, times.get());
        if (amiss == 0) {
          return next;
        }
        best = amiss < least ? next : best;
        least = Math.min(amiss, least);
      }
      Moment from = scuffed ? moment.plusSeconds(-sessions.scuff().seconds()) : moment;
      next = sessions.first(from.startOfHour().plusHours(1), scuffed);
    }
    return best;
  }

  /** A coat that is on: scuffed where it had to be, past its window where it was. */
  static RecoatTime laid(int number, Finish finish, DryingTimes times, Moment start) {
    ScuffReason planned = planned(number, finish);
    boolean missed = missed(finish, times, start);
    return new RecoatTime(start, missed ? ScuffReason.WINDOW_MISSED : planned);
  }

  private static ScuffReason planned(int number, Finish finish) {
    if (finish.film().bond() == CoatBond.SCUFF_ALWAYS) {
      return ScuffReason.BOND;
    }
    if (finish.use().raisesGrain() && number == 2) {
      return ScuffReason.RAISED_GRAIN;
    }
    return finish.sandedBetweenCoats() ? ScuffReason.DENIB : ScuffReason.NONE;
  }

  private static boolean missed(Finish finish, DryingTimes times, Moment start) {
    Optional<Moment> closes = times.moment(Stage.RECOAT_CLOSES);
    return finish.film().bond().hasWindow() && closes.isPresent() && start.isAfter(closes.get());
  }

  private static boolean wrinkles(Finish finish) {
    return finish.family() == FinishFamily.CATALYSED_LACQUER;
  }

  private static Moment afterMiss(Finish finish, DryingTimes times) {
    return wrinkles(finish) ? times.moment(Stage.FULL_CURE).orElse(sands(times)) : sands(times);
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
