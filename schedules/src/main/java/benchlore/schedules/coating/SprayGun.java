package benchlore.schedules.coating;

/** The kind of gun, which decides how much of the spray lands on the work. */
public enum SprayGun {
  /** High volume, low pressure. */
  HVLP,
  /** Cup gun at full line pressure. */
  CUP_GUN,
  /** Airless. */
  AIRLESS,
  /** Airless with air to shape the fan. */
  AIR_ASSISTED_AIRLESS
}
