package benchlore.schedules.coating;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.Message;
import benchlore.schedules.answer.Refusal;
import benchlore.schedules.material.Finish;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.quantity.Unit;
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

  /** One caution a limit passed; a refusal if the film stays too cold all the time it is wet. */
  static Answer<List<Caution>> cautions(DryingRequest request, DryingTimes times) {
    List<Caution> cautions = new ArrayList<>();
    List<PassedLimit> breaches = breaches(request, times);
    if (tooColdThroughout(request, breaches)) {
      return Answer.refuse(List.of(cold(request)));
    }
    if (!breaches.isEmpty()) {
      String better = better(request);
      for (PassedLimit breach : breaches) {
        cautions.add(WetCaution.of(breach, request, better));
      }
    }
    return Answer.of(cautions, List.of(), List.of());
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
    WetLimit[] limits = WetLimit.values();
    double[] bounds = new double[limits.length];
    double[] spans = new double[limits.length];
    double longest = 0;
    for (int i = 0; i < limits.length; i++) {
      bounds[i] = limits[i].bound(request.finish());
      spans[i] = WetAir.span(request, wet(request.finish(), times, limits[i]));
      longest = Math.max(longest, spans[i]);
    }
    for (int second = 0; second <= longest; second += WetAir.STEP_SECONDS) {
      WetAir.Sample air =
          WetAir.Sample.of(request.climate(), request.start().plusSeconds(second));
      for (int i = 0; i < limits.length; i++) {
        if (second <= spans[i] && limits[i].isPassed(limits[i].figure(air), bounds[i])) {
          return false;
        }
      }
    }
    return true;
  }

  /** Whether the film stays below its minimum temperature all the time it is wet. */
  static boolean tooCold(DryingRequest request, DryingTimes times) {
    Duration wet = wet(request.finish(), times, WetLimit.COLD);
    List<WetAir.Sample> air = WetAir.of(request, wet).samples();
    Optional<PassedLimit> cold = PassedLimit.find(WetLimit.COLD, request.finish(), air);
    return cold.isPresent() && tooColdThroughout(request, List.of(cold.get()));
  }

  private static Duration wet(Finish finish, DryingTimes times, WetLimit limit) {
    Optional<StageTime> touch = times.time(Stage.TOUCH_DRY);
    Optional<StageTime> recoat = times.time(Stage.RECOAT_OPENS);
    boolean longer =
        limit == WetLimit.DEW || MechanismRow.of(finish.dryingMechanism()).formsUntilRecoat();
    boolean byRecoat = recoat.isPresent() && (longer || touch.isEmpty());
    Optional<StageTime> until = byRecoat ? recoat : touch;
    return until.map(StageTime::planned).orElse(Duration.ZERO);
  }

  private static boolean tooColdThroughout(DryingRequest request, List<PassedLimit> breaches) {
    double lowest = request.finish().air().minimumTemperature().low();
    for (PassedLimit breach : breaches) {
      if (breach.limit() == WetLimit.COLD && breach.throughout()) {
        return breach.mildest() < lowest;
      }
    }
    return false;
  }

  private static Refusal cold(DryingRequest request) {
    double minimum = request.finish().air().minimumTemperature().high();
    return new Refusal(
        "climate",
        Message.of(
            "The film would stay below its minimum of {0} all the time it is wet.",
            Quantity.of(request.finish().air().minimumTemperature().low(), Unit.CELSIUS)),
        Message.of(
            "Heat the room to {0} or more before you start and hold it until the film is dry.",
            Quantity.of(minimum, Unit.CELSIUS)));
  }

  /** A start within a day from which every limit is kept to, in words; empty if there is none. */
  private static String better(DryingRequest request) {
    Moment hour = request.start().startOfHour();
    for (int i = 1; i <= HOURS_TO_TRY; i++) {
      DryingRequest later = request.withStart(hour.plusHours(i));
      if (FirstMoment.fine(later)) {
        Optional<DryingTimes> times = Drying.wetTimes(later);
        if (times.isPresent() && sound(later, times.get())) {
          return "Start at " + MomentWords.of(later.start(), request.start()) + " instead";
        }
      }
    }
    return "";
  }
}
