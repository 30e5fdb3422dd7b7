package benchlore.schedules.sanding;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * The cheapest of the ways through the grades that a master would teach, by dynamic programming.
 *
 * <pre>
 * best(g) = min over grades f on the shelf with g &lt; f &lt;= limit x g of best(f) + pass(g after f),
 *           or pass(g on the start surface)
 * </pre>
 *
 * <p>A pass costs its hands-on seconds. Grain always falls and never by more than the limit, on
 * bare wood no more than one grade of the {@link UsualSeries} is skipped, and a cut surface is
 * opened by no grade finer than its marks ask for ({@link Opening}), though by a coarser one where
 * that pays. None of these hangs on the shelf, so every path over a shelf is also a path over a
 * larger shelf, so a further grade can't make the answer dearer; and each pass costs no less on a
 * deeper start, so a shallower start can't either. Exact: all paths are covered.
 */
final class GritPath {
  /** Forgives rounding where a ratio of grains equals the limit. */
  private static final double SPARE = 1 + 1e-9;

  private final SandedStock stock;
  private final StartDepth start;
  private final double jumpLimitRatio;
  private final List<Step> steps = new ArrayList<>();

  private GritPath(SandedStock stock, StartDepth start, double jumpLimitRatio) {
    this.stock = stock;
    this.start = start;
    this.jumpLimitRatio = jumpLimitRatio;
  }

  /** A grade reached, by which pass and after which step. */
  private record Step(Grit grit, SandingPass pass, Optional<Step> before, double seconds) {}

  /**
   * The cheapest passes.
   *
   * @param stock what is sanded
   * @param shop shelf, tools and limit, already checked
   * @param start what must come off
   * @param target grades that will do as the last
   * @return the passes in order, none if the start already will do; empty if there is no way
   */
  static Optional<List<SandingPass>> cheapest(
      SandedStock stock, SandingShop shop, StartDepth start, GritTarget target) {
    if (target.takes(start.grainMicron()) || target.isPassedBy(start.grainMicron())) {
      return Optional.of(List.of());
    }
    GritPath path = new GritPath(stock, start, shop.jumpLimitRatio());
    Optional<Step> end = Optional.empty();
    for (Grit grit : coarseFirst(shop.shelf())) {
      List<AbrasiveCut> cuttings = AbrasiveCut.of(grit, stock, shop.tools());
      if (target.takes(grit.micron())) {
        end = cheaper(end, path.reach(grit, finishing(cuttings)));
      }
      path.reach(grit, cuttings).ifPresent(path.steps::add);
    }
    return end.map(GritPath::passes);
  }

  private Optional<Step> reach(Grit grit, List<AbrasiveCut> cuttings) {
    Optional<Step> best = Optional.empty();
    if (start.opens(grit) && follows(start.grainMicron(), grit)) {
      for (AbrasiveCut cutting : cuttings) {
        SandingPass pass =
            start.light()
                ? cutting.lightPass(start.depthMicron())
                : cutting.pass(start.depthMicron(), start.workMicron());
        best = cheaper(best, Optional.of(new Step(grit, pass, Optional.empty(), pass.seconds())));
      }
    }
    for (Step step : steps) {
      if (follows(step.grit().micron(), grit)) {
        double depth = stock.scratchMicron(step.grit());
        for (AbrasiveCut cutting : cuttings) {
          SandingPass pass = cutting.pass(depth, depth);
          double seconds = step.seconds() + pass.seconds();
          best = cheaper(best, Optional.of(new Step(grit, pass, Optional.of(step), seconds)));
        }
      }
    }
    return best;
  }

  private boolean follows(double beforeMicron, Grit grit) {
    double limit = grit.micron() * jumpLimitRatio;
    if (beforeMicron == Double.POSITIVE_INFINITY) {
      return true;
    }
    return beforeMicron > grit.micron()
        && beforeMicron <= limit * SPARE
        && !(stock.bareWood()
            && UsualSeries.skipped(beforeMicron, grit.micron()) > UsualSeries.MOST_SKIPPED);
  }

  private static Optional<Step> cheaper(Optional<Step> first, Optional<Step> second) {
    if (first.isEmpty() || second.isEmpty()) {
      return first.isEmpty() ? second : first;
    }
    return second.get().seconds() < first.get().seconds() ? second : first;
  }

  private static List<AbrasiveCut> finishing(List<AbrasiveCut> cuttings) {
    List<AbrasiveCut> fit = new ArrayList<>();
    for (AbrasiveCut cutting : cuttings) {
      if (cutting.tool().finishes()) {
        fit.add(cutting);
      }
    }
    return fit;
  }

  private static List<Grit> coarseFirst(List<Grit> shelf) {
    List<Grit> sorted = new ArrayList<>(shelf);
    sorted.sort((a, b) -> Double.compare(b.micron(), a.micron()));
    return sorted;
  }

  private static List<SandingPass> passes(Step end) {
    List<SandingPass> passes = new ArrayList<>();
    for (Optional<Step> at = Optional.of(end); at.isPresent(); at = at.get().before()) {
      passes.add(at.get().pass());
    }
    Collections.reverse(passes);
    return List.copyOf(passes);
  }
}
