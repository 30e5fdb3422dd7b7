package benchlore.schedules.material;

/**
 * How a wood's pores lie in its rings. Whether they are large enough to need a filler is another
 * matter: mahogany is diffuse-porous and open-grained, cherry diffuse-porous and closed.
 */
public enum Pores {
  /** A row of large pores at the start of each ring: oak, ash, elm. */
  RING,
  /** Large pores that shade off to small through the ring: walnut, butternut. */
  SEMI_RING,
  /** Even all through the ring, and mostly fine: cherry, maple, birch. */
  DIFFUSE,
  /** No pores: conifers. */
  NONE
}
