package benchlore.schedules.coating;

import benchlore.schedules.quantity.ComponentException;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.time.Moment;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A whole sequence of coats.
 *
 * @param coats in order, at least one
 * @param liquid how much liquid all coats take, losses included, CUBIC_METRE_LIQUID
 * @param dryFilm the dry film of all coats, MICRON
 * @param rubOut whether the sheen wanted has to be rubbed out after full cure, because the finish
 *     is not sold in it
 */
public record CoatingSchedule(
    List<CoatStep> coats, Quantity liquid, Quantity dryFilm, boolean rubOut) {
  /** Copies the list; refuses nulls and an empty list. */
  public CoatingSchedule {
    coats = List.copyOf(coats);
    Objects.requireNonNull(liquid, "liquid");
    Objects.requireNonNull(dryFilm, "dryFilm");
    if (coats.isEmpty()) {
      throw new ComponentException("coats", "must not be empty");
    }
  }

  /** The last coat. */
  public CoatStep last() {
    return coats.get(coats.size() - 1);
  }

  /**
   * When the last coat reaches a stage.
   *
   * @param stage the stage
   * @return the moment; empty if the finish does not state it
   */
  public Optional<Moment> moment(Stage stage) {
    return last().drying().moment(stage);
  }
}
