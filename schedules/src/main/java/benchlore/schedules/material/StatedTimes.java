package benchlore.schedules.material;

import benchlore.schedules.quantity.SourcedRange;
import java.util.Objects;
import java.util.Optional;

/**
 * How long a coat waits for each stage, as the maker states it for the reference air. The first six
 * are required of a {@link FinishRole#FILM film} or {@link FinishRole#PENETRATING penetrating}
 * finish and may be absent from the others; an entry that needs an absent one refuses and names it.
 *
 * @param touchDry seconds until a light touch leaves no mark
 * @param recoatOpens seconds until the next coat may go on
 * @param sandAfter seconds until it sands to powder
 * @param handleAfter seconds until it can be picked up and turned
 * @param lightUse seconds until careful use
 * @param fullCure seconds until hard, resistant, and fit for rubbing out
 * @param recoatCloses seconds after which the next coat needs a scuffed surface
 * @param stackAfter seconds until faces may touch: stacking, assembly
 */
public record StatedTimes(
    Optional<SourcedRange> touchDry,
    Optional<SourcedRange> recoatOpens,
    Optional<SourcedRange> sandAfter,
    Optional<SourcedRange> handleAfter,
    Optional<SourcedRange> lightUse,
    Optional<SourcedRange> fullCure,
    Optional<SourcedRange> recoatCloses,
    Optional<SourcedRange> stackAfter) {
  /** Refuses nulls. */
  public StatedTimes {
    Objects.requireNonNull(touchDry, "touchDry");
    Objects.requireNonNull(recoatOpens, "recoatOpens");
    Objects.requireNonNull(sandAfter, "sandAfter");
    Objects.requireNonNull(handleAfter, "handleAfter");
    Objects.requireNonNull(lightUse, "lightUse");
    Objects.requireNonNull(fullCure, "fullCure");
    Objects.requireNonNull(recoatCloses, "recoatCloses");
    Objects.requireNonNull(stackAfter, "stackAfter");
  }
}
