package benchlore.schedules.project;

import benchlore.schedules.material.ApplicationMethod;
import benchlore.schedules.material.Sheen;

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
    if (method == null || sheen == null) {
      throw new NullPointerException("method and sheen");
    }
  }
}
