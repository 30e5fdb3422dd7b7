package benchlore.schedules.air;

import java.util.OptionalDouble;

/**
 * Outdoor air needed, m3/s, the mixing factor included.
 *
 * <pre>
 * health: Q = K x sum(release of a solvent / its limit);  fire: Q = K x release / (share x LEL)
 * </pre>
 *
 * <p>At the greatest release rate: air so supplied can never pass the threshold, in a room of any
 * size. Source: the dilution ventilation equation Q' = G / C, Q = K Q', with a mixture's flows
 * added as for like effects.
 *
 * @param healthEveryMoment keeps the index at or below 1 at every moment; empty if no limit is
 *     known
 * @param healthEightHour keeps it there only on the average of 8 hours, the basis of the limits
 * @param fireTenth keeps below 10 % of the lower explosive limit; empty if none is known
 * @param fireQuarter keeps below 25 %: never a place to be, shown for comparison
 * @param governs which of {@code healthEveryMoment} and {@code fireTenth} is greater
 * @param governing the greater, m3/s
 * @param changesPerHour the greater as air changes of this room
 */
public record FlowNeeded(
    OptionalDouble healthEveryMoment,
    OptionalDouble healthEightHour,
    OptionalDouble fireTenth,
    OptionalDouble fireQuarter,
    Governs governs,
    double governing,
    double changesPerHour) {
  /** Which need is the greater. */
  public enum Governs {
    /** Breathing. */
    HEALTH,
    /** Fire. */
    FIRE,
    /** Neither is known, or nothing is released. */
    NEITHER
  }

  /** Index to keep to. */
  static final double FINE_INDEX = 1;

  /** Seconds in the 8 hours of a limit. */
  static final double EIGHT_HOURS = 28_800;

  static FlowNeeded of(Exposure exposure, RoomAir room, boolean healthKnown, boolean fireKnown) {
    double k = room.mixingFactor();
    double moment = k * exposure.greatestReleaseRate(LimitScale.HEALTH) / FINE_INDEX;
    double tenth =
        k * exposure.greatestReleaseRate(LimitScale.EXPLOSIVE) / FireRule.TENTH.percent();
    double health = healthKnown ? moment : 0;
    double fire = fireKnown ? tenth : 0;
    double governing = Math.max(health, fire);
    Governs governs =
        governing > 0 ? (fire > health ? Governs.FIRE : Governs.HEALTH) : Governs.NEITHER;
    double average = eightHour(exposure, room);
    double quarter = tenth * FireRule.TENTH.percent() / FireRule.QUARTER.percent();
    return new FlowNeeded(
        when(healthKnown, moment),
        when(healthKnown, average),
        when(fireKnown, tenth),
        when(fireKnown, quarter),
        governs,
        governing,
        governing * 3600 / room.volume());
  }

  /**
   * Enough for the release of each 8 hours alone; then, with that flow, for what is still in the
   * air of earlier coats as well. More air leaves less of it, so the second figure errs to more
   * air.
   */
  private static double eightHour(Exposure exposure, RoomAir room) {
    double k = room.mixingFactor();
    double alone = k * exposure.greatestMeanRelease(LimitScale.HEALTH, EIGHT_HOURS) / FINE_INDEX;
    if (!(alone > 0)) {
      return 0;
    }
    Exposure lean = exposure.withFlow(room, alone);
    return k * lean.greatestMeanSupply(LimitScale.HEALTH, EIGHT_HOURS, room.volume()) / FINE_INDEX;
  }

  private static OptionalDouble when(boolean known, double value) {
    return known ? OptionalDouble.of(value) : OptionalDouble.empty();
  }
}
