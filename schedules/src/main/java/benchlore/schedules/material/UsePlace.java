package benchlore.schedules.material;

/** Where the finished thing lives. */
public enum UsePlace {
  /** In a dry room. */
  INDOOR_DRY,
  /** Kitchen, bathroom: indoors with splashes and damp. */
  INDOOR_WET,
  /** Outdoors under a roof. */
  OUTDOOR_SHELTERED,
  /** Outdoors in sun and rain. */
  OUTDOOR_EXPOSED
}
