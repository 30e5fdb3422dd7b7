package benchlore.schedules.coating;

import benchlore.schedules.material.Finish;
import benchlore.schedules.quantity.Provenance;

/**
 * How a film's thickness stretches its waits.
 *
 * <pre>
 * factor = wet film / usual wet film, at least 1
 * dry film = wet film x solids by volume / 100
 * </pre>
 *
 * <p>Published: a coat twice as thick takes at least twice the time, roughly in proportion
 * (timber-floor coating maker, 2010). A thinner coat is not counted as faster: the safe side. Known
 * error: a very thick film skins over and takes longer than in proportion; the answer cautions.
 */
final class FilmThickness {
  /** Where the rule comes from. */
  static final Provenance RULE =
      Provenance.source("Timber-floor coating maker's questions and answers (2010)", "thick coats");

  /** Where dry film from wet film comes from. */
  static final Provenance DRY_RULE =
      Provenance.source("Coatings technical note 5.3, Handy Calculations", "wet and dry film");

  private FilmThickness() {}

  static double factor(Finish finish, double wetFilmMicron) {
    return Math.max(1, wetFilmMicron / finish.film().wetFilm().mid());
  }

  static double dryMicron(Finish finish, double wetFilmMicron) {
    return finish.liquid().solidsByVolume().mid() * wetFilmMicron / 100;
  }
}
