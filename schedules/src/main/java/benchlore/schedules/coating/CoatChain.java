package benchlore.schedules.coating;

import benchlore.schedules.time.Moment;
import java.util.Optional;

/**
 * All coats of a job laid out in thought, before the first is begun.
 *
 * @param first when the first coat goes on
 * @param last when the last one does
 * @param missed how many coats come after the window of the one under them has closed
 */
record CoatChain(Moment first, Moment last, int missed) {
  private static final int BEGINNINGS = 12;
  private static final int HOURS_APART = 12;

  /**
   * Where to begin: at the first moment the first coat can go on, unless coats would then miss
   * their windows and a later beginning, of a dozen half a day apart, has the last coat on earlier,
   * or no later with fewer of them missed.
   *
   * @return empty if the first coat finds no hour within 14 days
   */
  static Optional<Beginning> begin(CoatingRequest request) {
    Optional<Moment> earliest = first(request, request.start());
    if (earliest.isEmpty()) {
      return Optional.empty();
    }
    Optional<CoatChain> greedy = from(request, earliest.get());
    if (greedy.isEmpty() || greedy.get().missed() == 0) {
      return Optional.of(Beginning.at(earliest.get()));
    }
    CoatChain best = greedy.get();
    Optional<Moment> start = earliest;
    for (int i = 0; i < BEGINNINGS && start.isPresent(); i++) {
      start = first(request, start.get().plusHours(HOURS_APART));
      if (start.isPresent() && start.get().isBefore(best.last())) {
        CoatChain chain = from(request, start.get()).orElse(best);
        best = chain.beats(best) ? chain : best;
      }
    }
    return Optional.of(
        new Beginning(
            best.first(),
            earliest.get().secondsUntil(best.first()),
            Math.max(0, best.last().secondsUntil(greedy.get().last()))));
  }

  private boolean beats(CoatChain other) {
    int days = other.last().date().daysUntil(last().date());
    return days < 0 || (days == 0 && missed < other.missed());
  }

  static Optional<Moment> first(CoatingRequest request, Moment from) {
    return RecoatTime.first(from, request.scuffsBelow(), request.coat(from), request.sessions());
  }

  /**
   * The chain that begins at a moment.
   *
   * @return empty if a coat finds no hour
   */
  static Optional<CoatChain> from(CoatingRequest request, Moment first) {
    RecoatTime.Begun nothing = new RecoatTime.Begun(false, Optional.empty());
    Moment start = first;
    int missed = 0;
    for (int number = 2; number <= request.quantity().coats(); number++) {
      DryingRequest coat = request.coat(start);
      Optional<DryingTimes> times = Drying.chainTimes(coat);
      if (times.isEmpty()) {
        return Optional.empty();
      }
      Optional<RecoatTime> next =
          RecoatTime.after(number, coat, times.get(), request.sessions(), nothing);
      if (next.isEmpty()) {
        return Optional.empty();
      }
      missed = next.get().scuff() == ScuffReason.WINDOW_MISSED ? missed + 1 : missed;
      start = next.get().start();
    }
    return Optional.of(new CoatChain(first, start, missed));
  }
}
