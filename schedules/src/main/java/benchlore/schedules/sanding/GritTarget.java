package benchlore.schedules.sanding;

import benchlore.schedules.quantity.SourcedRange;
import java.util.List;
import java.util.Optional;

/**
 * Grades that will do as the last one, by grain size.
 *
 * @param coarsestMicron largest grain accepted
 * @param finestMicron smallest grain accepted
 */
record GritTarget(double coarsestMicron, double finestMicron) {
  /** Charts round grain to whole micrometres, so ends are taken with two percent to spare. */
  private static final double CHART_ROUNDING = 1.02;

  /** The range of P numbers as grain sizes. */
  static GritTarget of(SourcedRange grades) {
    return new GritTarget(Grits.micronOfP(grades.low()), Grits.micronOfP(grades.high()));
  }

  /**
   * Grades that will do for a finish on a wood: as coarse as its look allows, only the finer half
   * of the range (middle by ratio) on figured and soft wood, on which scratches show, and no finer
   * than P220 on wood that burnishes where the finish has to soak in or is waterborne.
   */
  static GritTarget of(SurfaceWanted wanted, SandingWood wood) {
    GritTarget whole = of(wanted.finalGrade());
    double coarsest = wanted.look().coarsestMicron(wanted.finalGrade());
    if (wood.figured() || wood.soft()) {
      coarsest = Math.min(coarsest, Math.sqrt(whole.coarsestMicron * whole.finestMicron));
    }
    double finestOnDense = Grits.micronOfP(SandingFigures.FINEST_ON_DENSE.low());
    boolean soaksIn = wanted.look() == FinishLook.OILED || wanted.raisesGrain();
    if (!wood.burnishes() || !soaksIn || whole.coarsestMicron < finestOnDense) {
      return new GritTarget(coarsest, whole.finestMicron);
    }
    return new GritTarget(
        Math.max(coarsest, finestOnDense), Math.max(whole.finestMicron, finestOnDense));
  }

  boolean takes(double micron) {
    return micron <= coarsestMicron * CHART_ROUNDING && micron * CHART_ROUNDING >= finestMicron;
  }

  /** True if a surface of this grain is finer than anything accepted. */
  boolean isPassedBy(double micron) {
    return micron * CHART_ROUNDING < finestMicron;
  }

  /** The coarsest accepted grade on a shelf. */
  Optional<Grit> coarsestOf(List<Grit> shelf) {
    Optional<Grit> best = Optional.empty();
    for (Grit grit : shelf) {
      boolean better = best.isEmpty() || grit.micron() > best.get().micron();
      if (takes(grit.micron()) && better) {
        best = Optional.of(grit);
      }
    }
    return best;
  }

  /** The finest accepted grade on a shelf. */
  Optional<Grit> finestOf(List<Grit> shelf) {
    Optional<Grit> best = Optional.empty();
    for (Grit grit : shelf) {
      boolean better = best.isEmpty() || grit.micron() < best.get().micron();
      if (takes(grit.micron()) && better) {
        best = Optional.of(grit);
      }
    }
    return best;
  }

  /** A P grade to buy that would do: the coarsest accepted, or the nearest. */
  Grit example() {
    for (Grit grit : GritTable.FEPA_P) {
      if (takes(grit.micron())) {
        return grit;
      }
    }
    return Grits.closest(GritSystem.FEPA_P, finestMicron);
  }
}
