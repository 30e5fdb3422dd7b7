package benchlore.schedules.trade;

/** How a wood's pores lie in its rings, which decides whether a flat film needs a filler first. */
public enum Pores {
  /** A row of large pores at the start of each ring: oak, ash, elm. */
  RING_POROUS,
  /** Large pores that shade off to small through the ring: walnut, butternut. */
  SEMI_RING_POROUS,
  /** Even all through the ring, and mostly fine: cherry, maple, birch. */
  DIFFUSE_POROUS,
  /** No pores: conifers. */
  NONPOROUS;

  /** True if the pores show as pits through a film unless they are filled. */
  public boolean open() {
    return this == RING_POROUS || this == SEMI_RING_POROUS;
  }
}
