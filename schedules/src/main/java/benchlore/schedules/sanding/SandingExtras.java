package benchlore.schedules.sanding;

import java.util.Optional;

/**
 * What the finish or the wood asks for beside the face passes.
 *
 * @param endGrain a finer pass over the end grain, so that it doesn't drink and darken
 * @param grainRaising before a waterborne coat
 * @param poreFilling for a flat film on open-pored wood
 * @param betweenCoats scuffing from coat to coat
 */
public record SandingExtras(
    Optional<SandingPass> endGrain,
    Optional<GrainRaising> grainRaising,
    Optional<PoreFilling> poreFilling,
    Optional<BetweenCoats> betweenCoats) {
  /** Nothing extra. */
  static SandingExtras none() {
    return new SandingExtras(
        Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
  }
}
