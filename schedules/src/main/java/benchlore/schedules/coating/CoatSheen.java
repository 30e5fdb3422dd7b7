package benchlore.schedules.coating;

import benchlore.schedules.answer.Checks;
import benchlore.schedules.material.Finish;
import benchlore.schedules.material.FinishRole;
import benchlore.schedules.material.Sheen;
import java.util.List;
import java.util.Optional;

/**
 * Which sheen each coat is: gloss to build, the wanted sheen last, since several flatted coats
 * cloud the film (common practice). A finish not sold in the wanted sheen is rubbed out, if it can
 * be.
 *
 * <p>An oil, wax or stain leaves no film to build: all its coats are of one tin, in the sheen
 * wanted where it is sold in several, else in none to speak of.
 */
final class CoatSheen {
  private CoatSheen() {}

  static Optional<Sheen> of(Finish finish, Sheen wanted, boolean last) {
    List<Sheen> sold = finish.film().sheens();
    if (finish.role() != FinishRole.FILM) {
      return sold.size() > 1 && sold.contains(wanted) ? Optional.of(wanted) : Optional.empty();
    }
    if (sold.isEmpty()) {
      return Optional.empty();
    }
    if (last && sold.contains(wanted)) {
      return Optional.of(wanted);
    }
    return Optional.of(glossiest(sold));
  }

  static boolean rubOut(Finish finish, Sheen wanted) {
    return finish.role() == FinishRole.FILM
        && !finish.film().sheens().isEmpty()
        && !finish.film().sheens().contains(wanted);
  }

  static void check(Checks checks, Finish finish, Sheen wanted) {
    checks.require(
        !rubOut(finish, wanted) || RubFamily.of(finish).reaches(wanted),
        "sheen",
        "This finish is not sold in that sheen and can't be rubbed to it.",
        "Choose one of the sheens it is sold in, or a harder finish that rubs out.");
  }

  static Sheen glossiest(List<Sheen> sold) {
    Sheen glossiest = Sheen.MATT;
    for (Sheen sheen : sold) {
      glossiest = sheen.compareTo(glossiest) > 0 ? sheen : glossiest;
    }
    return glossiest;
  }
}
