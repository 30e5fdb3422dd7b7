package benchlore.schedules.coating;

import java.time.LocalDateTime;
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
record NextCoat(LocalDateTime start, ScuffReason scuff) {
  private static final int HOURS_TO_LOOK = 24 * 14;

  /**
   * The first moment the next coat can go on in shop hours and in air it can stand.
   *
   * @param number the next coat's number, 2 or more
   * @param last the request of the coat before
   * @param times how that coat dries
   * @param hours the shop's
   * @return empty if there is no such moment within 14 days of the coat being ready
   */
  static Optional<NextCoat> after(
      int number, DryingRequest last, DryingTimes times, ShopHours hours) {
    FinishData finish = last.finish();
    ScuffReason scuff = planned(number, finish, times);
    LocalDateTime ready = scuff == ScuffReason.NONE ? opens(times) : sands(times);
    Optional<LocalDateTime> start = firstFine(ready, last, hours);
    if (start.isPresent() && missed(finish, times, start.get())) {
      LocalDateTime late = afterMiss(finish, times);
      LocalDateTime from = late.isAfter(start.get()) ? late : start.get();
      return firstFine(from, last, hours).map(s -> new NextCoat(s, ScuffReason.WINDOW_MISSED));
    }
    return start.map(s -> new NextCoat(s, scuff));
  }

  private static ScuffReason planned(int number, FinishData finish, DryingTimes times) {
    boolean always = finish.bond() == CoatBond.SCUFF_ALWAYS;
    boolean unknown = finish.bond() == CoatBond.WITHIN_WINDOW && !times.windowKnown();
    if (always || unknown) {
      return ScuffReason.BOND;
    }
    return finish.raisesGrain() && number == 2 ? ScuffReason.RAISED_GRAIN : ScuffReason.NONE;
  }

  private static boolean missed(FinishData finish, DryingTimes times, LocalDateTime start) {
    Optional<LocalDateTime> closes = times.moment(Stage.RECOAT_CLOSES);
    return finish.bond() == CoatBond.WITHIN_WINDOW
        && closes.isPresent()
        && start.isAfter(closes.get());
  }

  private static LocalDateTime afterMiss(FinishData finish, DryingTimes times) {
    boolean wrinkles = finish.family() == FinishFamily.CATALYSED_LACQUER;
    return wrinkles ? times.moment(Stage.FULL_CURE).orElse(sands(times)) : sands(times);
  }

  private static LocalDateTime opens(DryingTimes times) {
    return times.moment(Stage.RECOAT_OPENS).orElseThrow();
  }

  private static LocalDateTime sands(DryingTimes times) {
    LocalDateTime opens = opens(times);
    LocalDateTime sands = times.moment(Stage.SAND).orElse(opens);
    return sands.isAfter(opens) ? sands : opens;
  }

  private static Optional<LocalDateTime> firstFine(
      LocalDateTime ready, DryingRequest last, ShopHours hours) {
    LocalDateTime moment = ready;
    for (int i = 0; i < HOURS_TO_LOOK; i++) {
      if (hours.open(moment) && fine(last.withStart(moment))) {
        return Optional.of(moment);
      }
      moment = moment.withMinute(0).withSecond(0).withNano(0).plusHours(1);
    }
    return Optional.empty();
  }

  private static boolean fine(DryingRequest coat) {
    Optional<DryingTimes> times = Drying.wetTimes(coat);
    return FirstMoment.fine(coat) && times.isPresent() && !WetHours.tooCold(coat, times.get());
  }
}
