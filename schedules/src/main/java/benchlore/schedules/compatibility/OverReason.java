package benchlore.schedules.compatibility;

import benchlore.schedules.coating.Stage;
import benchlore.schedules.material.FinishFamily;
import benchlore.schedules.quantity.Provenance;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * What a rule says of one finish on another: what stands down is already there, what stands across
 * is put on.
 *
 * @param holds whether it holds
 * @param waitUntil the stage the under coat must have reached
 * @param barrier the family to put between, for {@link Holds#WITH_BARRIER}; else empty
 * @param why the reason, a plain sentence
 * @param from where the row comes from
 */
public record OverReason(
    Holds holds, Stage waitUntil, Optional<FinishFamily> barrier, String why, Provenance from)
    implements Reason {
  /** The trait that these rules ask for: a finish's family, by the name of its constant. */
  static final String FAMILY = "family";

  /** Whether one family holds on another, kindest first. */
  public enum Holds {
    /** Holds as it is. */
    YES,
    /** Holds on a scuffed surface. */
    SCUFFED,
    /** Holds with another finish between. */
    WITH_BARRIER,
    /** Does not hold. */
    NO
  }

  /** Refuses nulls, a barrier verdict without a barrier, and a barrier without that verdict. */
  public OverReason {
    if (holds == null || waitUntil == null || barrier == null || why == null || from == null) {
      throw new NullPointerException("holds, waitUntil, barrier, why and from");
    }
    if ((holds == Holds.WITH_BARRIER) != barrier.isPresent()) {
      throw new IllegalArgumentException(
          "barrier must be given for WITH_BARRIER and for nothing else: " + why);
    }
    if (why.isEmpty()) {
      throw new IllegalArgumentException("why must not be empty");
    }
  }

  @Override
  public Verdict verdict() {
    return switch (holds) {
      case YES -> Verdict.GOOD;
      case SCUFFED, WITH_BARRIER -> Verdict.CARE;
      case NO -> Verdict.NO;
    };
  }

  /**
   * The rule that gives this reason for some families on others.
   *
   * @param uppers the families to put on
   * @param unders the families already there
   */
  public Rule<OverReason> on(List<FinishFamily> uppers, List<FinishFamily> unders) {
    return new Rule<>(Map.of(FAMILY, anyOf(unders)), Map.of(FAMILY, anyOf(uppers)), this);
  }

  private static Condition anyOf(List<FinishFamily> families) {
    Set<String> names = new TreeSet<>();
    families.forEach(family -> names.add(family.name()));
    return new Condition.AnyOf(names);
  }

  /** What these rules know of a finish. */
  static Map<String, Trait> traits(FinishFamily family) {
    return Map.of(FAMILY, new Trait.Words(Set.of(family.name())));
  }

  /** Whether this reason decides rather than another: the stricter, then the longer wait. */
  boolean stricter(OverReason than) {
    int step = holds.compareTo(than.holds);
    return step > 0 || (step == 0 && waitUntil.compareTo(than.waitUntil) > 0);
  }
}
