package benchlore.schedules.coating;

/** Why the last coat is sanded before the next. */
public enum ScuffReason {
  /** It isn't: the coats bond by themselves. */
  NONE,
  /** This finish only holds on a scuffed surface. */
  BOND,
  /** The recoat window had closed, so the coats no longer bond by themselves. */
  WINDOW_MISSED,
  /** The first coat raised the grain. */
  RAISED_GRAIN,
  /** Dust and nibs in the last coat would show through the next. */
  DENIB
}
