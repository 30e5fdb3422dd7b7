package benchlore.schedules.project;

import benchlore.schedules.air.Release;
import benchlore.schedules.material.Finish;
import benchlore.schedules.material.FinishRole;
import java.util.List;
import java.util.Objects;

/**
 * One finish of those that go on one over the other.
 *
 * @param title what it is called in this shop
 * @param finish what it is
 * @param solvents its volatile part, shares by mass; empty if nothing but water evaporates
 * @param coats how it goes on
 */
public record Layer(String title, Finish finish, List<Release.Share> solvents, CoatChoice coats) {
  /** Copies the list; refuses nulls. */
  public Layer {
    Objects.requireNonNull(title, "title");
    Objects.requireNonNull(finish, "finish");
    Objects.requireNonNull(coats, "coats");
    solvents = List.copyOf(solvents);
  }

  /** The finish of this title, put on as its record has it. */
  public static Layer usual(String title, Finish finish, List<Release.Share> solvents) {
    return new Layer(title, finish, solvents, CoatChoice.usual(finish));
  }

  /** The same finish put on otherwise. */
  public Layer with(CoatChoice choice) {
    return new Layer(title, finish, solvents, choice);
  }

  /** Whether it lasts by itself: what colours, fills or seals is judged by what goes over it. */
  boolean lasts() {
    return finish.role() == FinishRole.FILM || finish.role() == FinishRole.PENETRATING;
  }

  /** Whether it fills pores, and is sanded off all but them. */
  boolean fills() {
    return finish.role() == FinishRole.FILLER;
  }

  /** Dry film it leaves on a face, micrometres; none of what stays in the wood. */
  double dryMicron() {
    boolean inTheWood = finish.role() == FinishRole.STAIN || finish.role() == FinishRole.FILLER;
    double wet = coats.coats() * coats.wetFilmMicron();
    return inTheWood ? 0 : wet * finish.liquid().solidsByVolume().high() / 100;
  }
}
