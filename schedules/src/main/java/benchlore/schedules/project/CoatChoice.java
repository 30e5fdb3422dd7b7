package benchlore.schedules.project;

import benchlore.schedules.material.ApplicationMethod;
import benchlore.schedules.material.Sheen;
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
}
