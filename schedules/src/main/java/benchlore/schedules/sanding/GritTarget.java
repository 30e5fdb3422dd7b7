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
   * The same, but only its finer half for figured and soft wood, on which scratches show; the
   * middle is taken by ratio.
   */
  static GritTarget of(SourcedRange grades, SandingWood wood) {
    GritTarget whole = of(grades);
    if (!wood.figured() && !wood.soft()) {
      return whole;
    }
    double middle = Math.sqrt(whole.coarsestMicron * whole.finestMicron);
    return new GritTarget(middle, whole.finestMicron);
  }

  boolean takes(double micron) {
    return micron <= coarsestMicron * CHART_ROUNDING && micron * CHART_ROUNDING >= finestMicron;
  }

  /** True if a surface of this grain is finer than anything accepted. */
  boolean isPassedBy(double micron) {
    return micron * CHART_ROUNDING < finestMicron;
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
