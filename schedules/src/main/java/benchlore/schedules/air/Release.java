package benchlore.schedules.air;

import benchlore.schedules.material.ApplicationMethod;
import benchlore.schedules.material.Solvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

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
 * @param curve how the solvent leaves it; empty for the usual release of the method and solvent
 * @param workSecond how long putting it on takes, 0 to a day; 0 if not known
 * @param flashPointCelsius of the liquid as sold; empty if not known, then its solvents' own count
 */
public record Release(
    double startSecond,
    double volatileKilogram,
    List<Share> shares,
    ApplicationMethod method,
    Optional<ReleaseCurve> curve,
    double workSecond,
    OptionalDouble flashPointCelsius) {
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
    Objects.requireNonNull(flashPointCelsius, "flashPointCelsius");
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

  /** One of which neither the time to put it on nor the flash point is known. */
  public Release(
      double startSecond,
      double volatileKilogram,
      List<Share> shares,
      ApplicationMethod method,
      Optional<ReleaseCurve> curve) {
    this(startSecond, volatileKilogram, shares, method, curve, 0, OptionalDouble.empty());
  }

  /**
   * The curve given, or the method's usual one for this solvent. What leaves quickly leaves over
   * all the time that putting the coat on takes, not in the method's usual few minutes.
   */
  ReleaseCurve curveOf(Share share) {
    return curve.orElseGet(
        () -> {
          ReleaseCurve usual = ReleaseByMethod.of(method, share.solvent());
          double quick = Math.max(usual.quickSecond(), workSecond);
          return new ReleaseCurve(usual.quickShare(), quick, usual.decaySecond());
        });
  }

  /** When the last of its solvents is done with leaving quickly, seconds from the plan's start. */
  double quickEndSecond() {
    double quick = workSecond;
    for (Share share : shares) {
      quick = Math.max(quick, curveOf(share).quickSecond());
    }
    return startSecond + quick;
  }

  /** The same coat brushed on, with the brush's usual release. */
  Release brushed() {
    return new Release(
        startSecond,
        volatileKilogram,
        shares,
        ApplicationMethod.BRUSH,
        Optional.empty(),
        workSecond,
        flashPointCelsius);
  }
}
