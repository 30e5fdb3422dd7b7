package benchlore.schedules.coating;

/** How the liquid gets onto the wood. */
public enum ApplicationMethod {
  /** Brush. */
  BRUSH,
  /** Cloth, on and off. */
  WIPE,
  /** Flat foam or fabric pad. */
  PAD,
  /** Roller. */
  ROLLER,
  /** Flooded on, the excess wiped off. */
  FLOOD,
  /** Spray gun or can. */
  SPRAY
}
