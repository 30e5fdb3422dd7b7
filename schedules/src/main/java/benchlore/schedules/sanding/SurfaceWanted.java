package benchlore.schedules.sanding;

import benchlore.schedules.quantity.SourcedRange;
import java.util.Objects;
import java.util.Optional;

/**
 * What the finish asks of the bare wood.
 *
 * @param finalGrade P numbers from coarsest to finest accepted before the first coat, 12 to 2500
 * @param look what the finish will look like, which decides where in that range to stop
 * @param betweenCoatGrade P numbers for sanding between coats; empty if coats are not sanded
 * @param coats coats of the finish, 0 to 50
 * @param raisesGrain true for waterborne: the wood is wetted, dried and knocked off first
 * @param poresFilled true if the film shall be flat: gloss, or any filled surface
 */
public record SurfaceWanted(
    SourcedRange finalGrade,
    FinishLook look,
    Optional<SourcedRange> betweenCoatGrade,
    int coats,
    boolean raisesGrain,
    boolean poresFilled) {
  /** Refuses nulls; figures are checked by the plan. */
  public SurfaceWanted {
    Objects.requireNonNull(finalGrade, "finalGrade");
    Objects.requireNonNull(look, "look");
    Objects.requireNonNull(betweenCoatGrade, "betweenCoatGrade");
  }
}
