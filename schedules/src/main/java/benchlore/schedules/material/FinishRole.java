package benchlore.schedules.material;

/** What a finish is for. */
public enum FinishRole {
  /** Builds a film on the surface. */
  FILM,
  /** Soaks in; the excess is wiped off. */
  PENETRATING,
  /** Goes under a film. */
  SEALER,
  /** Colours the wood. */
  STAIN,
  /** Fills pores. */
  FILLER,
  /** Thin soft layer on top. */
  WAX,
  /** Rubs a cured film to a sheen; leaves nothing behind. */
  COMPOUND
}
