package benchlore.schedules.coating;

/** How shiny a film is, dullest first. */
public enum Sheen {
  /** Hardly any reflection. */
  MATT,
  /** Soft reflection. */
  SATIN,
  /** Clear but not sharp reflection. */
  SEMI_GLOSS,
  /** Sharp reflection. */
  GLOSS
}
