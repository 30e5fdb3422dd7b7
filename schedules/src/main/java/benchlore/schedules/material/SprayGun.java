package benchlore.schedules.material;

/** The kind of gun, which decides how much of the spray lands on the work. */
public enum SprayGun {
  /** High volume, low pressure: at most 10 psi at the cap. */
  HVLP,
  /** Older cup gun at full line pressure. */
  CUP_GUN,
  /** Airless. */
  AIRLESS,
  /** Airless with air at the tip to shape the fan. */
  AIR_ASSISTED_AIRLESS
}
