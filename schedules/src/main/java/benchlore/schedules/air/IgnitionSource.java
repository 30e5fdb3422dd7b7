package benchlore.schedules.air;

/** A thing in the room, or open to it, that can light a vapour. */
public enum IgnitionSource {
  /** Pilot light or burner of a water heater, furnace, dryer or stove. */
  PILOT_LIGHT(Kind.FLAME, "a pilot light or burner"),
  /** Heater that burns gas, kerosene or wood into the room without a flue. */
  UNVENTED_FUEL_HEATER(Kind.FLAME, "an unvented fuel heater"),
  /** Electric heater with a glowing element. */
  OPEN_ELEMENT_HEATER(Kind.FLAME, "a heater with a glowing element"),
  /** Welding, cutting or grinding sparks. */
  WELDING_OR_GRINDING(Kind.FLAME, "welding or grinding"),
  /** Smoking, matches, lighters. */
  SMOKING(Kind.FLAME, "smoking"),
  /** Motor with brushes: drills, sanders, shop vacuums, many cheap fans. */
  BRUSHED_MOTOR(Kind.SPARK, "a motor with brushes"),
  /** Lights, switches, sockets or fans not rated for flammable vapour. */
  UNRATED_ELECTRICAL(Kind.SPARK, "lights or switches not rated for flammable vapour"),
  /** Static charge: plastic pails, hoses, dry air, unbonded metal. */
  STATIC(Kind.STATIC, "static charge");

  /** How surely it lights a vapour. */
  enum Kind {
    /** A flame, glow or spark shower that burns all the time it is on. */
    FLAME,
    /** Sparks when it runs or switches. */
    SPARK,
    /** Sparks by chance; bonding and earthing remove it. */
    STATIC
  }

  private final Kind kind;
  private final String words;

  IgnitionSource(Kind kind, String words) {
    this.kind = kind;
    this.words = words;
  }

  Kind kind() {
    return kind;
  }

  /** What it is, in words that fit after "the room holds". */
  public String words() {
    return words;
  }
}
