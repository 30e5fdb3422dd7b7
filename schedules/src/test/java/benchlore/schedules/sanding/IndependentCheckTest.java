package benchlore.schedules.sanding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.interpolation.LinearInterpolator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.MultiStartUnivariateOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import org.apache.commons.math3.random.Well19937c;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The engine against commons-math3 and against plain enumeration. */
class IndependentCheckTest {
  @ParameterizedTest
  @ValueSource(doubles = {1e-6, 5e-6, 25e-6, 100e-6, 400e-6})
  void stepoverFromScallopAgreesWithARootSolver(double heightMetre) {
    double radius = 0.003175;
    UnivariateFunction gap = s -> radius - Math.sqrt(radius * radius - s * s / 4) - heightMetre;
    double root = new BrentSolver(1e-14).solve(1000, gap, 1e-9, 2 * radius);
    assertEquals(root, ArcMarks.pitchMetre(radius, heightMetre), 1e-9);
  }

  @ParameterizedTest
  @ValueSource(doubles = {14, 70, 130, 165, 200, 260, 450, 700, 1100, 2200})
  void grainBetweenGradesAgreesWithALogInterpolator(double number) {
    List<Grit> grades = GritTable.FEPA_P;
    double[] x = grades.stream().mapToDouble(g -> Math.log(g.number())).toArray();
    double[] y = grades.stream().mapToDouble(g -> Math.log(g.micron())).toArray();
    double expected = Math.exp(new LinearInterpolator().interpolate(x, y).value(Math.log(number)));
    assertEquals(expected, Grits.micronOfP(number), 1e-9 * expected);
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void pathIsAsCheapAsTheBestOfAllSubsets(int seed) {
    Random random = new Random(seed);
    List<Grit> shelf = new ArrayList<>();
    for (Grit grit : GritTable.FEPA_P) {
      if (grit.micron() > 40 && random.nextInt(3) > 0) {
        shelf.add(grit);
      }
    }
    double depth = 20 + 400 * random.nextDouble();
    SandingRequest request =
        Questions.of(new StartSurface.TornGrain(depth)).withShop(Questions.orbital(shelf));
    StartDepth start = request.start().depth();
    GritTarget target = Sanding.target(request, start);
    double best = enumerate(shelf, start, target);
    assertEquals(best, secondsOrNone(request, start), 1e-9);
  }

  private static double secondsOrNone(SandingRequest request, StartDepth start) {
    return Sanding.facePasses(request, request.shop(), start)
        .map(Sanding::seconds)
        .orElse(Double.POSITIVE_INFINITY);
  }

  private static double enumerate(List<Grit> shelf, StartDepth start, GritTarget target) {
    List<Grit> sorted = new ArrayList<>(shelf);
    sorted.sort(Comparator.comparingDouble(Grit::micron).reversed());
    double best = Double.POSITIVE_INFINITY;
    for (int mask = 1; mask < 1 << sorted.size(); mask++) {
      best = Math.min(best, cost(sorted, mask, start, target));
    }
    return best;
  }

  private static double cost(List<Grit> sorted, int mask, StartDepth start, GritTarget target) {
    SandedStock stock = SandedStock.wood(Questions.CHERRY, 1, false);
    double seconds = 0;
    double depth = start.depthMicron();
    Grit before = null;
    if (!opensTornGrain(sorted, mask)) {
      return Double.POSITIVE_INFINITY;
    }
    for (int i = 0; i < sorted.size(); i++) {
      if ((mask >> i & 1) == 1) {
        Grit grit = sorted.get(i);
        if (before != null
            && (before.micron() / grit.micron() > SandingShop.USUAL_JUMP + 1e-9
                || skipped(before, grit) > 1)) {
          return Double.POSITIVE_INFINITY;
        }
        List<SandingTool> tools = List.of(SandingTool.RANDOM_ORBIT);
        seconds += AbrasiveCut.of(grit, stock, tools).get(0).pass(depth, depth).seconds();
        depth = stock.scratchMicron(grit);
        before = grit;
      }
    }
    return target.takes(before.micron()) ? seconds : Double.POSITIVE_INFINITY;
  }

  /** The first grade taken is P120 or coarser. */
  private static boolean opensTornGrain(List<Grit> sorted, int mask) {
    return sorted.get(Integer.numberOfTrailingZeros(mask)).number() <= 120;
  }

  /** By the numbers on the back, which are all on one scale here. */
  private static long skipped(Grit before, Grit after) {
    return IntStream.of(40, 60, 80, 100, 120, 150, 180, 220, 320)
        .filter(number -> number > before.number() && number < after.number())
        .count();
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.01, 0.02, 0.05})
  void bestStepoverAgreesWithAGeneralOptimiser(double feed) {
    SandingRequest sanding = Questions.of(new StartSurface.TornGrain(100));
    MillingPass milling = new MillingPass(0.00635, feed, 0.0001, 0.003, 1);
    MachineOrSandCurve curve =
        Questions.given(MachineOrSand.plan(new MachineOrSandRequest(milling, sanding)));
    UnivariateFunction total =
        s -> {
          StartDepth start = new StartSurface.BallNose(0.00635, s).depth();
          double area = sanding.area().totalSquareMetre();
          return area / (feed * s) + secondsOrNone(sanding, start);
        };
    double least =
        new MultiStartUnivariateOptimizer(new BrentOptimizer(1e-10, 1e-12), 40, new Well19937c(7))
            .optimize(
                new UnivariateObjectiveFunction(total),
                GoalType.MINIMIZE,
                new SearchInterval(0.0001, 0.003),
                new MaxEval(20_000))
            .getValue();
    assertTrue(
        curve.best().weightedSeconds() <= least * 1.002,
        curve.best().weightedSeconds() + " against " + least);
  }

  @Test
  void dustIsAreaTimesDepthTimesDensity() {
    SandingRequest request =
        Questions.with(
            Questions.of(new StartSurface.TornGrain(100)),
            new SurfaceWanted(
                Questions.grades(180, 220), FinishLook.SATIN, Optional.empty(), 1, false, false));
    SandingSchedule schedule =
        Questions.given(Sanding.plan(Questions.with(request, new SandingArea(2, 0, 1))));
    double removed = schedule.totals().removedMicron() * 1e-6;
    assertEquals(2 * removed * 560, schedule.totals().dustKilogram(), 1e-9);
  }
}
