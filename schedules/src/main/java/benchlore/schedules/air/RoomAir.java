package benchlore.schedules.air;

/**
 * The room as the air rules see it. Any numbers may be given; the entry refuses what makes no
 * sense.
 *
 * @param volume m3 of air, 1 to 100 000
 * @param outdoorFlow m3/s of outdoor air, above 0 to 100; never recirculated air
 * @param mixingFactor K, 1 (perfect mixing) to 10 (poor: one small opening, corners without
 *     draught)
 * @param celsius air temperature, -20 to 50
 */
public record RoomAir(double volume, double outdoorFlow, double mixingFactor, double celsius) {
  /**
   * A room whose ventilation is stated in air changes.
   *
   * @param volume m3
   * @param changesPerHour air changes an hour of outdoor air
   * @param mixingFactor 1 to 10
   * @param celsius air temperature
   */
  public static RoomAir ofAirChanges(
      double volume, double changesPerHour, double mixingFactor, double celsius) {
    return new RoomAir(volume, changesPerHour * volume / 3600, mixingFactor, celsius);
  }

  /** Effective air changes a second: flow / K / volume. */
  double effectiveChangesPerSecond() {
    return outdoorFlow / mixingFactor / volume;
  }
}
