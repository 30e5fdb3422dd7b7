package benchlore.generator.planning;

import benchlore.generator.content.Fact;
import benchlore.generator.content.Facts;
import benchlore.generator.content.Problem;
import benchlore.schedules.material.FieldTable;
import benchlore.schedules.quantity.ComponentException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A value the engine refuses, as a problem at the field that holds it: the engine names the
 * component.
 */
final class EngineRefusal {
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
    } catch (ComponentException e) {
      return List.of(problem(facts, key, e));
    } catch (IllegalArgumentException e) {
      return List.of(problem(facts, key, worded(e)));
    }
  }

  /** A figure outside the limits of its field. */
  static Problem of(Facts facts, FieldTable.Fault fault) {
    return problem(facts, "", new ComponentException(fault.key(), fault.words()));
  }

  /** Records of materials still say their component in words, first of all. */
  private static ComponentException worded(IllegalArgumentException refusal) {
    String message = String.valueOf(refusal.getMessage());
    int space = message.indexOf(' ');
    return space < 0
        ? new ComponentException("", message)
        : new ComponentException(message.substring(0, space), message.substring(space + 1));
  }

  private static Problem problem(Facts facts, String key, ComponentException refusal) {
    String named = field(refusal.component());
    Optional<Fact> fact = facts.find(named);
    String text = fact.isPresent() ? "`" + named + "` " + refusal.problem() : refusal.getMessage();
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
    return component.replaceAll("([a-z0-9])([A-Z])", "$1-$2").toLowerCase(Locale.ROOT);
  }
}
