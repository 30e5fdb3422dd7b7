package benchlore.schedules.air;

import static org.junit.jupiter.api.Assertions.assertEquals;

import benchlore.schedules.material.ApplicationMethod;
import benchlore.schedules.material.Solvent;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The exact solution against a general numeric library (Apache Commons Math 3). */
class MixedRoomTest {
  /** Volume, effective changes an hour, start, mass, quick share, quick time, decay time. */
  private static final String CASES =
      """
      60,   0.5,  0,    0.4, 0.5, 900,  3600
      60,   6,    600,  0.4, 0.5, 900,  3600
      60,   1,    0,    0.4, 0.5, 900,  3600
      60,   1.0001, 0,  0.4, 0.5, 900,  3600
      2000, 20,   100,  5,   0.8, 600,  1800
      10,   0.05, 0,    0.01, 0,  60,   100000
      10,   0.05, 3000, 0.01, 1,  7200, 60
      30,   2,    0,    1,   0.7, 1,    1800
      """;

  private static MixedRoom room(double volume, double changesPerHour) {
    return new MixedRoom(volume, changesPerHour / 3600);
  }

  @ParameterizedTest
  @CsvSource(textBlock = CASES)
  void concentrationAgreesWithNumericSolution(
      double volume, double changes, double start, double mass, double q, double f, double tau) {
    MixedRoom room = room(volume, changes);
    Emission emission = new Emission(start, mass, new ReleaseCurve(q, f, tau));
    for (double after : new double[] {0.5 * f, f, f + 300, f + 3600, f + 40_000}) {
      double exact = room.concentration(emission, start + after);
      double numeric = solve(room, emission, start + after);
      assertEquals(numeric, exact, 1e-9 * mass / volume + 1e-8 * exact);
    }
  }

  /** Integrates stretch by stretch, so that no step crosses a break. */
  private static double solve(MixedRoom room, Emission emission, double until) {
    double[] c = {0};
    double at = emission.startSecond();
    for (double end : List.of(Math.min(until, emission.quickEndSecond()), until)) {
      if (end > at) {
        double inside = 0.5 * (at + end);
        boolean quick = inside < emission.quickEndSecond();
        double last = Math.nextDown(emission.quickEndSecond());
        var equation =
            equation(room, t -> emission.kilogramPerSecond(quick ? Math.min(t, last) : t));
        new DormandPrince853Integrator(1e-9, 100, 1e-16, 1e-12).integrate(equation, at, c, end, c);
        at = end;
      }
    }
    return c[0];
  }

  private static FirstOrderDifferentialEquations equation(
      MixedRoom room, DoubleUnaryOperator release) {
    return new FirstOrderDifferentialEquations() {
      @Override
      public int getDimension() {
        return 1;
      }

      @Override
      public void computeDerivatives(double t, double[] c, double[] slope) {
        slope[0] = release.applyAsDouble(t) / room.volume() - room.changesPerSecond() * c[0];
      }
    };
  }

  @ParameterizedTest
  @CsvSource(textBlock = CASES)
  void doseAgreesWithQuadrature(
      double volume, double changes, double start, double mass, double q, double f, double tau) {
    MixedRoom room = room(volume, changes);
    Emission emission = new Emission(start, mass, new ReleaseCurve(q, f, tau));
    var gauss = new IterativeLegendreGaussIntegrator(12, 1e-10, 1e-14);
    double end = emission.quickEndSecond();
    double numeric =
        gauss.integrate(100_000, t -> room.concentration(emission, t), start, end)
            + gauss.integrate(100_000, t -> room.concentration(emission, t), end, end + 28_800);
    assertEquals(numeric, room.dose(emission, end + 28_800), 1e-7 * numeric);
  }

  @ParameterizedTest
  @CsvSource(textBlock = CASES)
  void peakAgreesWithOptimizer(
      double volume, double changes, double start, double mass, double q, double f, double tau) {
    Exposure exposure = exposure(volume, changes, start, mass, new ReleaseCurve(q, f, tau));
    double until = start + f + 200_000;
    var found =
        new BrentOptimizer(1e-9, 1e-6)
            .optimize(
                new MaxEval(1000),
                GoalType.MAXIMIZE,
                new UnivariateObjectiveFunction(t -> exposure.at(LimitScale.PPM, t)),
                new SearchInterval(start + f, until));
    double best = Math.max(found.getValue(), exposure.at(LimitScale.PPM, start + f));
    assertEquals(
        best,
        PeakSearch.highest(ConcentrationSamples.of(exposure, until), LimitScale.PPM).value(),
        1e-6 * best);
  }

  @ParameterizedTest
  @CsvSource(textBlock = CASES)
  void reEntryAgreesWithRootFinder(
      double volume, double changes, double start, double mass, double q, double f, double tau) {
    Exposure exposure = exposure(volume, changes, start, mass, new ReleaseCurve(q, f, tau));
    double until = start + f + 200_000;
    AirSchedule.Peak peak =
        PeakSearch.highest(ConcentrationSamples.of(exposure, until), LimitScale.PPM);
    double threshold = 0.3 * peak.value();
    double root =
        new BrentSolver(1e-6)
            .solve(
                10_000,
                t -> exposure.at(LimitScale.PPM, t) - threshold,
                Math.max(peak.second(), start + 1),
                start + f + 2_000_000);
    double got =
        ReEntrySearch.secondsAfter(exposure, LimitScale.PPM, threshold, start).orElseThrow();
    assertEquals(root - start, got, 1e-3);
  }

  private static Exposure exposure(
      double volume, double changes, double start, double mass, ReleaseCurve curve) {
    Solvent solvent = Solvents.of("toluene");
    List<Release.Share> shares = List.of(new Release.Share(solvent, 1));
    Release release = new Release(start, mass, shares, ApplicationMethod.BRUSH, Optional.of(curve));
    return Exposure.of(RoomAir.ofAirChanges(volume, changes, 1, 20), List.of(release));
  }
}
