package benchlore.schedules.material;

import benchlore.schedules.quantity.SourcedRange;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * How coats of a finish build up.
 *
 * @param bond how it holds to its own last coat
 * @param wetFilm wet film of one coat, micrometres
 * @param coats usual number of coats
 * @param maximumDryFilm thickest sound dry film of all coats, micrometres
 * @param sheens the sheens it is sold in; may be empty
 */
public record FilmBuild(
    CoatBond bond,
    SourcedRange wetFilm,
    SourcedRange coats,
    Optional<SourcedRange> maximumDryFilm,
    List<Sheen> sheens) {
  /** Copies the list; refuses nulls. */
  public FilmBuild {
    Objects.requireNonNull(bond, "bond");
    Objects.requireNonNull(wetFilm, "wetFilm");
    Objects.requireNonNull(coats, "coats");
    Objects.requireNonNull(maximumDryFilm, "maximumDryFilm");
    sheens = List.copyOf(sheens);
  }
}
