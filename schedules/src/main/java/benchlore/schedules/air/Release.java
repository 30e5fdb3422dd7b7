package benchlore.schedules.air;

import benchlore.schedules.material.ApplicationMethod;
import benchlore.schedules.material.Solvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * One coat's solvent going into the air. Any numbers may be given; the entry refuses what makes no
 * sense.
 *
 * @param startSecond when the coat is begun, seconds from the plan's start, 0 to 30 days
 * @param volatileKilogram mass of the coat's volatile part, kg, above 0 to 100; for spraying all
 *     that leaves the gun, overspray too
 * @param shares what that part is made of; shares by mass, together at most 1, the remainder being
 *     water; a share of the id "water" is dropped
 * @param method how the coat is put on
 * @param curve how the solvent leaves it; empty for the usual release of the method
 */
public record Release(
    double startSecond,
    double volatileKilogram,
    List<Share> shares,
    ApplicationMethod method,
    Optional<ReleaseCurve> curve) {
  private static final String WATER = "water";

  /**
   * One solvent of a mixture.
   *
   * @param solvent which
   * @param massShare of the volatile part, above 0 to 1
   */
  public record Share(Solvent solvent, double massShare) {
    /** Refuses null. */
    public Share {
      Objects.requireNonNull(solvent, "solvent");
    }
  }

  /** Copies the list without water; refuses nulls. */
  public Release {
    Objects.requireNonNull(method, "method");
    Objects.requireNonNull(curve, "curve");
    List<Share> solvents = new ArrayList<>(shares);
    solvents.removeIf(share -> share.solvent().id().equals(WATER));
    shares = List.copyOf(solvents);
  }

  /** Solvents' share of the volatile part, the rest being water. */
  double solventShare() {
    double sum = 0;
    for (Share share : shares) {
      sum = sum + share.massShare();
    }
    return sum;
  }

  /** The curve given, or the method's usual one for the slowest solvent in the mixture. */
  ReleaseCurve curveUsed() {
    return curve.orElseGet(() -> ReleaseByMethod.of(method, slowestEvaporation()));
  }

  /**
   * The same coat where putting it on takes so long: what leaves quickly leaves over all that time,
   * not in the method's usual few minutes.
   *
   * @param seconds from the first stroke to the last, 0 or more
   */
  public Release putOnOver(double seconds) {
    ReleaseCurve usual = curveUsed();
    ReleaseCurve spread =
        new ReleaseCurve(
            usual.quickShare(), Math.max(usual.quickSecond(), seconds), usual.decaySecond());
    return new Release(startSecond, volatileKilogram, shares, method, Optional.of(spread));
  }

  /** The same coat brushed on, with the brush's usual release. */
  Release brushed() {
    return new Release(
        startSecond, volatileKilogram, shares, ApplicationMethod.BRUSH, Optional.empty());
  }

  private double slowestEvaporation() {
    double slowest = Double.MAX_VALUE;
    for (Share share : shares) {
      double rate = share.solvent().volatility().evaporationRate().map(d -> d.low()).orElse(0.0);
      slowest = Math.min(slowest, rate);
    }
    return slowest;
  }
}
