package benchlore.schedules.sanding;

import java.util.List;
import java.util.Optional;

/** Adds the extras and the sums to the face passes. */
final class SandingPlan {
  private static final double METRE_PER_MICRON = 1e-6;

  private SandingPlan() {}

  static SandingSchedule of(SandingRequest request, StartDepth start, List<SandingPass> passes) {
    Optional<Grit> last = last(request, passes);
    SandingExtras extras = new SandingExtrasPlan(request).of(start, last);
    return new SandingSchedule(
        start.depthMicron(), passes, extras, totals(request, start, passes, extras));
  }

  private static Optional<Grit> last(SandingRequest request, List<SandingPass> passes) {
    if (!passes.isEmpty()) {
      return Optional.of(passes.get(passes.size() - 1).grit());
    }
    return request.start() instanceof StartSurface.SandedTo sanded
        ? Optional.of(sanded.grit())
        : Optional.empty();
  }

  private static SandingTotals totals(
      SandingRequest request, StartDepth start, List<SandingPass> passes, SandingExtras extras) {
    double area = request.area().totalSquareMetre();
    double density = request.wood().densityKilogramPerCubicMetre();
    double face = Sanding.seconds(passes);
    double removed = removedMicron(passes);
    double film = passes.isEmpty() ? 0 : start.filmMicron();
    double wood = (removed - film) * METRE_PER_MICRON * area * density;
    double filmDust = film * METRE_PER_MICRON * area * SandingFigures.FILM_DENSITY.low();
    Tally faces = new Tally(face, discs(passes), wood + filmDust);
    Tally all = withExtras(faces, request, extras);
    return new SandingTotals(all.seconds, face, all.discs, removed, all.dustKilogram);
  }

  private static Tally withExtras(Tally faces, SandingRequest request, SandingExtras extras) {
    double area = request.area().totalSquareMetre();
    double density = request.wood().densityKilogramPerCubicMetre();
    double film = SandingFigures.FILM_DENSITY.low() * area;
    Tally tally = faces;
    if (extras.endGrain().isPresent()) {
      double ends = request.area().endGrainSquareMetre() * density;
      tally = tally.with(extras.endGrain().get(), 1, 0, ends);
    }
    if (extras.grainRaising().isPresent()) {
      GrainRaising raising = extras.grainRaising().get();
      tally = tally.with(raising.knockOff(), 1, raising.wetSeconds(), area * density);
    }
    if (extras.poreFilling().isPresent()) {
      PoreFilling filling = extras.poreFilling().get();
      tally = tally.with(filling.level(), 1, filling.packSeconds(), film);
    }
    if (extras.betweenCoats().isPresent()) {
      BetweenCoats between = extras.betweenCoats().get();
      tally = tally.with(between.each(), between.times(), 0, film);
    }
    return tally;
  }

  /** Running sums. */
  private record Tally(double seconds, int discs, double dustKilogram) {
    Tally with(SandingPass pass, int times, double moreSeconds, double kilogramPerMetre) {
      double dust = kilogramPerMetre * METRE_PER_MICRON * pass.removedMicron() * times;
      return new Tally(
          times * pass.seconds() + moreSeconds + seconds,
          discs + times * pass.discs(),
          dustKilogram + dust);
    }
  }

  private static double removedMicron(List<SandingPass> passes) {
    double removed = 0;
    for (SandingPass pass : passes) {
      removed = removed + pass.removedMicron();
    }
    return removed;
  }

  private static int discs(List<SandingPass> passes) {
    int discs = 0;
    for (SandingPass pass : passes) {
      discs = discs + pass.discs();
    }
    return discs;
  }
}
