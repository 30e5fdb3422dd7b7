package benchlore.schedules.air;

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
 * @param brushedPeakIndex highest mixture index if the sprayed coats were brushed instead; empty if
 *     nothing is sprayed or no limit is known
 */
public record AirSchedule(
    List<Point> curve,
    Peaks peaks,
    EightHour eightHour,
    Coverage coverage,
    FlowNeeded flow,
    List<ReEntry> reEntries,
    RespiratorAdvice respirator,
    OptionalDouble brushedPeakIndex) {
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
   * @param index mixture index; empty if no limit is known
   * @param percentLowerExplosive percent; empty if no limit is known
   * @param dangerShare sum of concentration / level immediately dangerous to life or health; empty
   *     if no such level is known
   */
  public record Peaks(
      Peak ppm,
      Optional<Peak> index,
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
   * @param healthSecond seconds after its start from which the index stays at or below 1; empty if
   *     the next coat comes first, if it takes over 60 days or if no limit is known
   * @param fireSecond the same for a tenth of the lower explosive limit
   * @param second the later of the two; empty if either is
   */
  public record ReEntry(
      double coatStartSecond,
      OptionalDouble healthSecond,
      OptionalDouble fireSecond,
      OptionalDouble second) {}
}
