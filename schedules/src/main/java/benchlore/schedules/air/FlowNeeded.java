package benchlore.schedules.air;

import java.util.OptionalDouble;

/**
 * Outdoor air needed, m3/s, the mixing factor included.
 *
 * <pre>
 * health: Q = K x sum(release of a solvent / its limit);  fire: Q = K x release / (share x LEL)
 * </pre>
 *
 * <p>Each limit over its own time: what is released in 8 hours against the 8-hour limits; the
 * greatest release rate against the limits for 15 minutes, against ceilings and against the lower
 * explosive limit: air so supplied can never pass them, in a room of any size. Source: the dilution
 * ventilation equation Q' = G / C, Q = K Q', with a mixture's flows added as for like effects.
 *
 * @param healthShort keeps every 15 minutes within the limits for 15 minutes and every moment
 *     within the ceilings; empty if no limit is known
 * @param healthEightHour keeps the average of 8 hours within the 8-hour limits
 * @param fireTenth keeps below 10 % of the lower explosive limit; empty if none is known
 * @param fireQuarter keeps below 25 %: never a place to be, shown for comparison
 * @param governs which of health (the greater of its two) and {@code fireTenth} is greater
 * @param governing the greater, m3/s
 * @param changesPerHour the greater as air changes of this room
 */
public record FlowNeeded(
    OptionalDouble healthShort,
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

  /** Seconds in the quarter of an hour of a short-term limit. */
  static final double QUARTER_HOUR = 900;

  static FlowNeeded of(Exposure exposure, RoomAir room, boolean healthKnown, boolean fireKnown) {
    double k = room.mixingFactor();
    double spell =
        k
            * Math.max(
                exposure.greatestReleaseRate(LimitScale.QUARTER_HOUR),
                exposure.greatestReleaseRate(LimitScale.CEILING))
            / FINE_INDEX;
    double tenth =
        k * exposure.greatestReleaseRate(LimitScale.EXPLOSIVE) / FireRule.TENTH.percent();
    double average = eightHour(exposure, room);
    double health = healthKnown ? Math.max(spell, average) : 0;
    double fire = fireKnown ? tenth : 0;
    double governing = Math.max(health, fire);
    Governs governs =
        governing > 0 ? (fire > health ? Governs.FIRE : Governs.HEALTH) : Governs.NEITHER;
    double quarter = tenth * FireRule.TENTH.percent() / FireRule.QUARTER.percent();
    return new FlowNeeded(
        when(healthKnown, spell),
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
