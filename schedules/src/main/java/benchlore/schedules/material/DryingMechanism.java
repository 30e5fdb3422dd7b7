package benchlore.schedules.material;

/** What turns the liquid into a film. */
public enum DryingMechanism {
  /** Solvent leaves; nothing else happens. */
  EVAPORATION,
  /** Water leaves and soft particles flow together. */
  COALESCENCE,
  /** Oil takes up oxygen from the air. */
  OXIDATION,
  /** Two parts react with each other. */
  TWO_PART,
  /** Water vapour from the air is part of the reaction. */
  MOISTURE_CURE
}
