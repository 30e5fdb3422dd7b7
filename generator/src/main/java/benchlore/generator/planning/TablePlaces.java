package benchlore.generator.planning;

import benchlore.schedules.movement.PlaceClimate;
import java.util.List;

/**
 * Where a plan's parts will live, as the tables of places and uses call it: the one map between the
 * two.
 *
 * <pre>
 * heated or conditioned room  indoors and dry: no water but what is spilled
 * unheated shed               between two: no rain and no sun as indoors, damp for months as under a
 *                             roof; what suits either does, and what speaks against the other is told
 * outdoors, covered           under a roof
 * boat cabin                  under a roof: out of rain and sun, and at its mooring as damp as a porch
 * </pre>
 */
final class TablePlaces {
  private TablePlaces() {}

  /** The rows of a place, of which the kindest decides. */
  static List<String> of(PlaceClimate place) {
    return switch (place) {
      case HEATED_ROOM, CONDITIONED_ROOM -> List.of("indoor-dry");
      case UNHEATED_SHED -> List.of("indoor-dry", "outdoor-sheltered");
      case OUTDOORS_COVERED, BOAT_CABIN -> List.of("outdoor-sheltered");
    };
  }

  /** "in a heated room". */
  static String words(PlaceClimate place) {
    return switch (place) {
      case HEATED_ROOM -> "in a heated room";
      case CONDITIONED_ROOM -> "in a conditioned room";
      case UNHEATED_SHED -> "in an unheated shed";
      case OUTDOORS_COVERED -> "outdoors under a roof";
      case BOAT_CABIN -> "in a boat's cabin";
    };
  }
}
