package benchlore.schedules.material;

/** How a coat holds to the coat of the same finish under it. */
public enum CoatBond {
  /** Each coat redissolves the last; no sanding needed for the bond. */
  MELTS_IN,
  /** Bonds by itself while the recoat window is open; must be scuffed once it has closed. */
  WITHIN_WINDOW,
  /** Must be scuffed before every coat. */
  SCUFF_ALWAYS,
  /** May be recoated at any time after the window opens, without scuffing. */
  ANY_TIME
}
