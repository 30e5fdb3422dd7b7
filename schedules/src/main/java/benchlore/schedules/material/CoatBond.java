package benchlore.schedules.material;

/** How a coat holds to the coat of the same finish under it. */
public enum CoatBond {
  /** Each coat redissolves the last; no sanding needed for the bond. */
  MELTS_IN,
  /** Bonds by itself while the recoat window is open; must be scuffed once it has closed. */
  WITHIN_WINDOW,
  /** Must be scuffed before every coat. */
  SCUFF_ALWAYS,
  /** Goes on while the coat under it is tacky; once that has hardened, it is washed and scuffed. */
  WHILE_TACKY,
  /** Goes on again while the wood is still wet from the coat before, or not at all. */
  WHILE_WET,
  /** May be recoated at any time after the window opens, without scuffing. */
  ANY_TIME;

  /** Whether the next coat goes on before the last is dry. */
  public boolean beforeDry() {
    return this == WHILE_TACKY || this == WHILE_WET;
  }

  /** Whether a closing of the recoat window matters. */
  public boolean hasWindow() {
    return this == WITHIN_WINDOW || beforeDry();
  }
}
