package benchlore.schedules.air;

import benchlore.schedules.quantity.ComponentException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The air of the room while coats dry. It is the room's average: beside the wet work there is more.
 *
 * @param curve the air over time, rising in time
 * @param peaks the highest values and when
 * @param eightHour averages over the worst 8 hours that begin with a coat
 * @param coverage which limits were used and which solvents have none
 * @param flow the outdoor air needed
 * @param reEntries for each coat, in order of start
 * @param respirator what to wear while the air is not fine, and where it stops protecting
 * @param brushedIndex the worst index, each limit over its own time, if the sprayed coats were
 *     brushed instead; empty if nothing is sprayed or no limit is known
 */
public record AirSchedule(
    List<Point> curve,
    Peaks peaks,
    EightHour eightHour,
    Coverage coverage,
    FlowNeeded flow,
    List<ReEntry> reEntries,
    RespiratorAdvice respirator,
    OptionalDouble brushedIndex) {
  /** Copies the lists. */
  public AirSchedule {
    curve = List.copyOf(curve);
    reEntries = List.copyOf(reEntries);
  }

  /**
   * The air at one moment.
   *
   * @param second since the plan's start
   * @param ppm all solvents together
   * @param index sum of concentration / limit over the solvents that have one; empty if none has
   * @param percentLowerExplosive percent of the lower explosive limit; empty if none is known
   */
  public record Point(
      double second, double ppm, OptionalDouble index, OptionalDouble percentLowerExplosive) {}

  /**
   * A highest value.
   *
   * @param second since the plan's start
   * @param value how high, on the scale named where it stands
   */
  public record Peak(double second, double value) {}

  /**
   * The highest values.
   *
   * @param ppm all solvents together
   * @param index concentration over the 8-hour limits at one moment; empty if no limit is known
   * @param quarterHour mixture index of the worst 15 minutes, which begin then; empty if no limit
   *     is known
   * @param ceiling mixture index against the ceilings; empty if no solvent has one
   * @param percentLowerExplosive percent; empty if no limit is known
   * @param dangerShare sum of concentration / level immediately dangerous to life or health; empty
   *     if no such level is known
   */
  public record Peaks(
      Peak ppm,
      Optional<Peak> index,
      Optional<Peak> quarterHour,
      Optional<Peak> ceiling,
      Optional<Peak> percentLowerExplosive,
      Optional<Peak> dangerShare) {}

  /**
   * Averages over 8 hours.
   *
   * @param fromSecond when those 8 hours begin
   * @param ppm all solvents together
   * @param index mixture index of the averages; empty if no limit is known
   */
  public record EightHour(double fromSecond, double ppm, OptionalDouble index) {}

  /**
   * What the figures stand on.
   *
   * @param limits the governing exposure limit of each solvent that has one
   * @param withoutHealthLimit ids of solvents without a published exposure limit: the index leaves
   *     them out
   * @param withoutExplosiveLimit ids of solvents without a published lower explosive limit
   */
  public record Coverage(
      List<ExposureLimit> limits,
      List<String> withoutHealthLimit,
      List<String> withoutExplosiveLimit) {
    /** Copies the lists. */
    public Coverage {
      limits = List.copyOf(limits);
      withoutHealthLimit = List.copyOf(withoutHealthLimit);
      withoutExplosiveLimit = List.copyOf(withoutExplosiveLimit);
    }

    /** True if every solvent has an exposure limit. */
    public boolean healthComplete() {
      return withoutHealthLimit.isEmpty();
    }

    /** True if every solvent has a lower explosive limit. */
    public boolean explosiveComplete() {
      return withoutExplosiveLimit.isEmpty();
    }
  }

  /**
   * When the room is fine again after a coat, for the solvents that have limits.
   *
   * @param coatStartSecond which coat
   * @param healthSecond seconds after its start from which the index stays at or below 1, 0 if it
   *     never rises above; empty if the next coat comes first, if it takes over 60 days or if no
   *     limit is known
   * @param fireSecond the same for a tenth of the lower explosive limit
   * @param verdict whether there is a time to tell, or why not
   * @param second the time to tell, the later of the two, above 0; empty but for {@link
   *     Verdict#AFTER}
   */
  public record ReEntry(
      double coatStartSecond,
      OptionalDouble healthSecond,
      OptionalDouble fireSecond,
      Verdict verdict,
      OptionalDouble second) {
    /** Refuses a time beside a verdict that tells none, and one that is not above 0. */
    public ReEntry {
      if (second.isPresent() != (verdict == Verdict.AFTER)) {
        throw new IllegalArgumentException("a time and its verdict disagree: " + verdict);
      }
      if (second.isPresent() && !(second.getAsDouble() > 0)) {
        throw new ComponentException("second", "must be above 0");
      }
    }

    /**
     * The same where the work itself is known to last: no one is told to come back before it ends.
     *
     * @param workSecond from the coat's start to its last stroke
     */
    public ReEntry afterWork(double workSecond) {
      return second.isPresent() && second.getAsDouble() <= workSecond
          ? new ReEntry(
              coatStartSecond,
              healthSecond,
              fireSecond,
              Verdict.WITHIN_WORK,
              OptionalDouble.empty())
          : this;
    }
  }

  /** Whether a time to come back can be told. */
  public enum Verdict {
    /** Yes. */
    AFTER(""),
    /** The room's air never passes the limits, so there is nothing to wait for. */
    NEVER_OVER("With this much air the vapour stays within every limit there is for it."),
    /** It passes the 8-hour figure for a while, and is back below it before the coat is on. */
    WITHIN_WORK("The vapour is thickest while you work; keep others out till you are done."),
    /** What harms most here is not what the figures count. */
    NOT_COUNTED(
        "No time to come back is told: isocyanate or formaldehyde decides here, and these figures"
            + " do not count it. Stay out until the film is hard, and keep to the safety data"
            + " sheet."),
    /** The air is not fine before the next coat, or no limit is known. */
    UNKNOWN(
        "No time to come back can be told. Stay out until the film is dry and the smell is gone.");

    private final String words;

    Verdict(String words) {
      this.words = words;
    }

    /** What to tell in place of a time; empty where there is a time. */
    public String words() {
      return words;
    }
  }

  /**
   * How many times what may be breathed the room's air holds, each limit over its own time: the
   * greatest of the average of 8 hours, of the worst 15 minutes and of the worst moment against a
   * ceiling. 0 where no limit is known.
   */
  public double worstIndex() {
    double short15 = peaks.quarterHour().map(Peak::value).orElse(0.0);
    double moment = peaks.ceiling().map(Peak::value).orElse(0.0);
    return Math.max(eightHour.index().orElse(0), Math.max(short15, moment));
  }

  /**
   * The same air where the work is known to last.
   *
   * @param workSecond from a coat's start to its last stroke
   */
  public AirSchedule afterWork(double workSecond) {
    List<ReEntry> later = new ArrayList<>();
    for (ReEntry reEntry : reEntries) {
      later.add(reEntry.afterWork(workSecond));
    }
    return withReEntries(later);
  }

  /** The same air with this mask. */
  AirSchedule with(RespiratorAdvice mask) {
    return new AirSchedule(curve, peaks, eightHour, coverage, flow, reEntries, mask, brushedIndex);
  }

  private AirSchedule withReEntries(List<ReEntry> others) {
    return new AirSchedule(
        curve, peaks, eightHour, coverage, flow, others, respirator, brushedIndex);
  }
}
