package benchlore.schedules.project;

import benchlore.schedules.material.ApplicationMethod;
import benchlore.schedules.material.Finish;
import benchlore.schedules.material.FinishRole;
import benchlore.schedules.material.Sheen;
import benchlore.schedules.quantity.Numeric;
import java.util.Objects;

/**
 * How the finish goes on.
 *
 * @param coats 1 to 50
 * @param wetFilmMicron wet film of each, 1 to 1000
 * @param method by brush, cloth, spray …
 * @param sheen the sheen wanted in the end
 */
public record CoatChoice(int coats, double wetFilmMicron, ApplicationMethod method, Sheen sheen) {
  /** Refuses nulls; figures are checked by the plan. */
  public CoatChoice {
    Objects.requireNonNull(method, "method");
    Objects.requireNonNull(sheen, "sheen");
  }

  /**
   * How a finish goes on where nothing else is said: the middle of its record's coats and film, its
   * first method; a film in the glossiest sheen it is sold in, since gloss builds.
   */
  public static CoatChoice usual(Finish finish) {
    return new CoatChoice(
        Numeric.round(finish.film().coats().mid()),
        finish.film().wetFilm().mid(),
        finish.use().methods().get(0),
        usualSheen(finish));
  }

  private static Sheen usualSheen(Finish finish) {
    boolean film = finish.role() == FinishRole.FILM;
    Sheen usual = film && finish.film().sheens().isEmpty() ? Sheen.GLOSS : Sheen.MATT;
    for (Sheen sheen : finish.film().sheens()) {
      boolean more = sheen.compareTo(usual) > 0;
      usual = more && (film || sheen.compareTo(Sheen.SATIN) <= 0) ? sheen : usual;
    }
    return usual;
  }
}
