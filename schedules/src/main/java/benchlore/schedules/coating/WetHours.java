package benchlore.schedules.coating;

import benchlore.schedules.answer.Caution;
import benchlore.schedules.material.Finish;
import benchlore.schedules.time.Duration;
import benchlore.schedules.time.Moment;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The air's limits while a coat is wet: until touch dry, or until the recoat window opens where the
 * film forms that long. The dew point matters until the window opens for every finish, since dew
 * dulls a young film.
 */
final class WetHours {
  private static final int HOURS_TO_TRY = 24;

  private WetHours() {}

  /** One caution a limit passed. */
  static List<Caution> cautions(DryingRequest request, DryingTimes times) {
    List<Caution> cautions = new ArrayList<>();
    List<PassedLimit> breaches = breaches(request, times);
    if (!breaches.isEmpty()) {
      String better = better(request);
      for (PassedLimit breach : breaches) {
        cautions.add(WetCaution.of(breach, request, better));
      }
    }
    return cautions;
  }

  private static List<PassedLimit> breaches(DryingRequest request, DryingTimes times) {
    Finish finish = request.finish();
    WetAir air = WetAir.of(request, wet(finish, times, WetLimit.DEW));
    List<PassedLimit> breaches = new ArrayList<>();
    for (WetLimit limit : WetLimit.values()) {
      List<WetAir.Sample> wet = air.until(wet(finish, times, limit));
      PassedLimit.find(limit, finish, wet).ifPresent(breaches::add);
    }
    return breaches;
  }

  /** Whether every limit is kept to while the film is wet. */
  static boolean sound(DryingRequest request, DryingTimes times) {
    return passed(request, spans(request, times), 1) == 0;
  }

  /** Whether the coat passes the gate: see {@link AirGate}. */
  static boolean passable(DryingRequest request, DryingTimes times) {
    WetLimit[] limits = WetLimit.values();
    double[] spans = new double[limits.length];
    double touch = WetAir.span(request, untilTouchDry(times));
    for (int i = 0; i < limits.length; i++) {
      spans[i] = limits[i].gates() ? touch : -1;
    }
    return passed(request, spans, 1) == 0;
  }

  /** How much is amiss while the film is wet: times a limit is passed, a sample each. */
  static int amiss(DryingRequest request, DryingTimes times) {
    return passed(request, spans(request, times), Integer.MAX_VALUE);
  }

  private static double[] spans(DryingRequest request, DryingTimes times) {
    WetLimit[] limits = WetLimit.values();
    double[] spans = new double[limits.length];
    for (int i = 0; i < limits.length; i++) {
      spans[i] = WetAir.span(request, wet(request.finish(), times, limits[i]));
    }
    return spans;
  }

  /** Counts the samples past their limits, each limit as long as its span, up to so many. */
  private static int passed(DryingRequest request, double[] spans, int most) {
    WetLimit[] limits = WetLimit.values();
    double[] bounds = new double[limits.length];
    double longest = -1;
    for (int i = 0; i < limits.length; i++) {
      bounds[i] = limits[i].bound(request.finish());
      longest = Math.max(longest, spans[i]);
    }
    int passed = 0;
    for (int second = 0; second <= longest && passed < most; second += WetAir.STEP_SECONDS) {
      WetAir.Sample air = WetAir.Sample.of(request.climate(), request.start().plusSeconds(second));
      for (int i = 0; i < limits.length; i++) {
        boolean counts = second <= spans[i];
        passed =
            counts && limits[i].isPassed(limits[i].figure(air), bounds[i]) ? passed + 1 : passed;
      }
    }
    return passed;
  }

  /** How long the film is open to the air's harm: until touch dry, where it is known. */
  static Duration untilTouchDry(DryingTimes times) {
    Optional<StageTime> touch = times.time(Stage.TOUCH_DRY);
    return touch
        .or(() -> times.time(Stage.RECOAT_OPENS))
        .map(StageTime::planned)
        .orElse(Duration.ZERO);
  }

  private static Duration wet(Finish finish, DryingTimes times, WetLimit limit) {
    Optional<StageTime> touch = times.time(Stage.TOUCH_DRY);
    Optional<StageTime> recoat = times.time(Stage.RECOAT_OPENS);
    boolean longer =
        limit == WetLimit.DEW || MechanismRow.of(finish.dryingMechanism()).formsUntilRecoat();
    Duration dry = touch.or(() -> recoat).map(StageTime::planned).orElse(Duration.ZERO);
    Duration open = longer ? recoat.map(StageTime::planned).orElse(dry) : dry;
    // What goes on tacky opens before it is dry.
    return open.compareTo(dry) > 0 ? open : dry;
  }

  /** A start within a day from which every limit is kept to, in words; empty if there is none. */
  private static String better(DryingRequest request) {
    Moment hour = request.start().startOfHour();
    for (int i = 1; i <= HOURS_TO_TRY; i++) {
      DryingRequest later = request.withStart(hour.plusHours(i));
      Optional<DryingTimes> times = Drying.wetTimes(later);
      if (times.isPresent() && sound(later, times.get())) {
        return "Start at " + MomentWords.of(later.start(), request.start()) + " instead";
      }
    }
    return "";
  }
}
