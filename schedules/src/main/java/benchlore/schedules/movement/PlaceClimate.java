package benchlore.schedules.movement;

import benchlore.schedules.quantity.Provenance;

/**
 * Where the finished part will live, when no readings are to hand: the air of its driest and its
 * dampest season, averaged over weeks as wood feels it.
 *
 * <p>From memory of temperate climates; a cheap hygrometer read over a year beats every row. The
 * handbook's general levels agree: 4 to 6 % in heated rooms and in deserts, about 12 % outdoors
 * under cover in the north.
 */
public enum PlaceClimate {
  /** Heated in winter, windows open in summer. */
  HEATED_ROOM(21, 25, 24, 60),
  /** Heated, cooled and dried: a steady house. */
  CONDITIONED_ROOM(21, 35, 23, 50),
  /** A garage or shed without heating. */
  UNHEATED_SHED(20, 50, 8, 80),
  /** Outdoors under a roof, never rained on. */
  OUTDOORS_COVERED(25, 50, 5, 85),
  /** A closed cabin afloat: warm and dry in summer sun, damp at its mooring. */
  BOAT_CABIN(30, 45, 10, 85);

  private final double dryCelsius;
  private final double dryPercent;
  private final double dampCelsius;
  private final double dampPercent;

  PlaceClimate(double dryCelsius, double dryPercent, double dampCelsius, double dampPercent) {
    this.dryCelsius = dryCelsius;
    this.dryPercent = dryPercent;
    this.dampCelsius = dampCelsius;
    this.dampPercent = dampPercent;
  }

  /** The place's two seasons. */
  public Seasons seasons() {
    return new Seasons(
        new SteadyAir(dryCelsius, dryPercent), new SteadyAir(dampCelsius, dampPercent), from());
  }

  /** Where the rows come from. */
  public Provenance from() {
    return Provenance.fromMemory("seasonal averages of a temperate climate");
  }
}
