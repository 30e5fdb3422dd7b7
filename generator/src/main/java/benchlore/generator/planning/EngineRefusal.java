package benchlore.generator.planning;

import benchlore.generator.content.Fact;
import benchlore.generator.content.Facts;
import benchlore.generator.content.Problem;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * A value the engine refuses, as a problem at the field that holds it. The engine's message starts
 * with the name of its component: {@code specificGravity must be …}.
 */
final class EngineRefusal {
  private static final Map<String, String> OTHER_NAMES =
      Map.of(
          "osha-limit", "osha-pel",
          "niosh-limit", "niosh-rel",
          "mass-share", "solvents");

  private EngineRefusal() {}

  /** Has the engine read some facts; gives its refusal, if any. */
  static List<Problem> of(Facts facts, Runnable reading) {
    return at(facts, "", reading);
  }

  /** Has the engine read the facts at a key; gives its refusal, if any. */
  static List<Problem> at(Facts facts, String key, Runnable reading) {
    try {
      reading.run();
      return List.of();
    } catch (IllegalArgumentException e) {
      return List.of(problem(facts, key, String.valueOf(e.getMessage())));
    }
  }

  private static Problem problem(Facts facts, String key, String message) {
    int space = message.indexOf(' ');
    String named = space < 0 ? "" : field(message.substring(0, space));
    Optional<Fact> fact = facts.find(named);
    String text = fact.isPresent() ? "`" + named + "`" + message.substring(space) : message;
    String unit = fact.map(EngineRefusal::unit).orElse("");
    return facts
        .spot(fact.isPresent() ? named : key)
        .problem("the engine refuses this: " + text, "Correct it" + unit + ".");
  }

  private static String unit(Fact fact) {
    if (!(fact instanceof Fact.Measure measure)) {
      return "";
    }
    return switch (measure.datum().unit()) {
      case RATIO, COUNT, PERCENT -> "";
      default ->
          "; the limits are in the engine's unit, "
              + measure.datum().unit().name().toLowerCase(Locale.ROOT).replace('_', ' ');
    };
  }

  /** An engine's name as a record's field: {@code specificGravity} is {@code specific-gravity}. */
  static String field(String component) {
    String kebab = component.replaceAll("([a-z0-9])([A-Z])", "$1-$2").toLowerCase(Locale.ROOT);
    return OTHER_NAMES.getOrDefault(kebab, kebab);
  }
}
