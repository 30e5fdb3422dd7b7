package benchlore.schedules.sanding;

/** How a wood's pores lie, which decides whether a flat film needs a filler first. */
public enum Pores {
  /** Large pores in a band at each ring: oak, ash. */
  RING_POROUS,
  /** Large pores that shade off through the ring: walnut; count mahogany-like woods here too. */
  SEMI_RING_POROUS,
  /** Fine pores all through: cherry, maple. */
  DIFFUSE_POROUS,
  /** No pores: conifers. */
  NONPOROUS;

  /** True if the pores show as pits through a film unless they are filled. */
  boolean open() {
    return this == RING_POROUS || this == SEMI_RING_POROUS;
  }
}
