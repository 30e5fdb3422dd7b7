package benchlore.schedules.material;

import benchlore.schedules.quantity.SourcedRange;
import java.util.List;
import java.util.Objects;

/**
 * How and where a finish is put on.
 *
 * @param methods how it may be applied
 * @param places where it lasts
 * @param finalGrade last sanding grade before the first coat, P grade, unit COUNT
 * @param betweenCoatGrade sanding grade between coats, P grade, unit COUNT
 * @param raisesGrain whether the first coat raises the grain
 * @param how how it is worked
 */
public record FinishUse(
    List<ApplicationMethod> methods,
    List<UsePlace> places,
    SourcedRange finalGrade,
    SourcedRange betweenCoatGrade,
    boolean raisesGrain,
    Directions how) {
  /** Copies the lists; refuses nulls. */
  public FinishUse {
    methods = List.copyOf(methods);
    places = List.copyOf(places);
    Objects.requireNonNull(finalGrade, "finalGrade");
    Objects.requireNonNull(betweenCoatGrade, "betweenCoatGrade");
    Objects.requireNonNull(how, "how");
  }
}
