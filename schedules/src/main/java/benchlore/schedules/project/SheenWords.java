package benchlore.schedules.project;

import benchlore.schedules.coating.ScuffReason;
import benchlore.schedules.material.Sheen;

/** Words of the coating rules as the trade says them. */
final class SheenWords {
  static final String OTHER_BELOW = "The finish below only holds this one on a scuffed surface.";

  private SheenWords() {}

  static String of(Sheen sheen) {
    return switch (sheen) {
      case MATT -> "matt";
      case SATIN -> "satin";
      case SEMI_GLOSS -> "semi-gloss";
      case GLOSS -> "gloss";
    };
  }

  static String of(ScuffReason reason) {
    return switch (reason) {
      case NONE -> "The coats bond by themselves.";
      case BOND -> "This finish only holds on a scuffed surface.";
      case WINDOW_MISSED ->
          "The recoat window has closed by then: unscuffed, the next coat may peel.";
      case DENIB -> "Dust has settled in the last coat: take the nibs off, no more.";
      case RAISED_GRAIN -> "The first coat raised the grain: sand the whiskers off.";
    };
  }
}
