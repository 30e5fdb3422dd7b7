package benchlore.schedules.coating;

import benchlore.schedules.answer.Message;
import benchlore.schedules.answer.Refusal;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.time.Duration;
import java.util.List;
import java.util.Optional;

/**
 * The gate no coat passes: from the brush until the film is touch dry, air and surface keep within
 * what the finish stands, and the surface stays 3 deg C above the dew point.
 *
 * <p>The limits are the safer ends of what the finish states. Why there is no going past them:
 * below its minimum a film does not form or stays soft; dew under or in a wet film dulls and lifts
 * it.
 */
final class AirGate {
  private AirGate() {}

  /**
   * The limit that is passed.
   *
   * @return the one that governs, cold first, since drying the air does not help cold work; empty
   *     if every limit is kept
   */
  static Optional<PassedLimit> passed(DryingRequest request) {
    // Where it is too cold to dry at all, the moment it goes on tells enough.
    Duration open = Drying.wetTimes(request).map(WetHours::untilTouchDry).orElse(Duration.ZERO);
    List<WetAir.Sample> wet = WetAir.of(request, open).samples();
    for (WetLimit limit : WetLimit.values()) {
      if (limit.gates()) {
        Optional<PassedLimit> passed = PassedLimit.find(limit, request.finish(), wet);
        if (passed.isPresent()) {
          return passed;
        }
      }
    }
    return Optional.empty();
  }

  /**
   * Why the coat may not go on, in degrees.
   *
   * @param passed the limit that governs
   * @param request the coat
   * @param ways what would do instead; empty: what helps against that limit in general
   */
  static Refusal refusal(PassedLimit passed, DryingRequest request, List<Message> ways) {
    WetLimit limit = passed.limit();
    Quantity worst = Quantity.of(passed.worst(), limit.unit());
    Quantity bound = Quantity.of(limit.bound(request.finish()), limit.unit());
    String when = " From " + MomentWords.of(passed.first(), request.start()) + ".";
    Message problem = Message.of(problem(limit) + when, worst, bound);
    Message remedy = ways.isEmpty() ? Message.of(remedy(limit), bound) : Message.either(ways);
    return new Refusal("climate", problem, remedy);
  }

  private static String problem(WetLimit limit) {
    return switch (limit) {
      case COLD ->
          "Too cold: the work falls to {0} before the film is touch dry; this finish needs {1} or"
              + " more.";
      case HOT ->
          "Too hot: the air reaches {0} before the film is touch dry; this finish stands {1} at"
              + " most.";
      case DAMP ->
          "Too damp: the air reaches {0} humidity before the film is touch dry; this finish stands"
              + " {1} at most.";
      case DRY ->
          "Too dry: the air falls to {0} humidity before the film is touch dry; this finish cures by"
              + " the air's water and needs {1} or more.";
      case DEW, BLUSH ->
          "Dew: the work comes within {0} of the dew point before the film is touch dry; it must"
              + " stay {1} above, or water settles on the wet film.";
    };
  }

  private static String remedy(WetLimit limit) {
    return switch (limit) {
      case COLD ->
          "Warm room and work to {0} or more first, and hold it until the film is touch dry.";
      case HOT -> "Coat in a cooler hour or in the shade, under {0}.";
      case DAMP -> "Warm or dry the air until it is under {0}.";
      case DRY -> "Damp the air to {0} or more; never wet the film.";
      case DEW, BLUSH ->
          "Start early enough that the film is touch dry before the evening, or hold the work {0}"
              + " above the dew point with dry heat.";
    };
  }
}
