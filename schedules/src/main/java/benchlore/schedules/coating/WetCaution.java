package benchlore.schedules.coating;

import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.Message;
import benchlore.schedules.quantity.Quantity;

/** The words of a passed limit: what happens, when, and what to change. */
final class WetCaution {
  private WetCaution() {}

  static Caution of(PassedLimit breach, DryingRequest request, String better) {
    Quantity worst = Quantity.of(breach.worst(), breach.limit().unit());
    Quantity bound = Quantity.of(breach.limit().bound(request.finish()), breach.limit().unit());
    String when = " From " + MomentWords.of(breach.first(), request.start()) + ".";
    String start = better.isEmpty() ? "" : better + ". Otherwise: ";
    return new Caution(
        code(breach.limit()),
        Caution.Severity.WORK,
        Message.of(what(breach.limit()) + when, worst, bound),
        Message.of(start + measure(breach.limit()), measures(breach.limit()) ? only(bound) : NONE));
  }

  private static final Quantity[] NONE = {};

  private static Quantity[] only(Quantity quantity) {
    return new Quantity[] {quantity};
  }

  private static boolean measures(WetLimit limit) {
    return limit != WetLimit.BLUSH;
  }

  private static String code(WetLimit limit) {
    return switch (limit) {
      case COLD -> "cold-while-wet";
      case HOT -> "hot-while-wet";
      case DAMP -> "damp-while-wet";
      case DRY -> "dry-while-wet";
      case DEW -> "dew-while-wet";
      case BLUSH -> "blush";
    };
  }

  private static String what(WetLimit limit) {
    return switch (limit) {
      case COLD -> "The film is still wet when the work cools to {0}, below its minimum of {1}.";
      case HOT ->
          "The air reaches {0}, above the {1} this finish stands while wet: it drags, bubbles"
              + " or skins over.";
      case DAMP -> "The air reaches {0} humidity, above the {1} this finish stands while wet.";
      case DRY -> "The air falls to {0} humidity, below the {1} this finish needs to cure.";
      case DEW ->
          "The work's margin over the dew point falls to {0}; under {1} dew may settle and dull"
              + " or lift the film.";
      case BLUSH ->
          "Fast solvents chill the film, and the surface is only {0} above the dew point;"
              + " under about {1} it may blush (turn milky).";
    };
  }

  private static String measure(WetLimit limit) {
    return switch (limit) {
      case COLD -> "Keep room and work at {0} or more until it is dry.";
      case HOT -> "Work in the shade or a cooler hour, under {0}.";
      case DAMP -> "Run a dehumidifier or dry heat to stay under {0}.";
      case DRY -> "Damp the air to {0} or more; never wet the film.";
      case DEW ->
          "Keep heat on the work through the night so that it stays {0} above the dew point.";
      case BLUSH ->
          "Wait for drier air, warm the work and the room, or use the slow thinner the label"
              + " allows.";
    };
  }
}
