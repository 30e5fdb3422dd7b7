package benchlore.schedules.material;

/** How the liquid gets onto the wood. */
public enum ApplicationMethod {
  /** By brush. */
  BRUSH,
  /** By cloth, on and off: a thin film. */
  WIPE,
  /** By flat foam or fabric pad. */
  PAD,
  /** By roller. */
  ROLLER,
  /** Flooded on, the excess wiped off. */
  FLOOD,
  /** By spray gun or can: part of it evaporates before it lands. */
  SPRAY
}
