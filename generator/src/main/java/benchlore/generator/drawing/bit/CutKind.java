package benchlore.generator.drawing.bit;

/** How a bit meets the work, which decides how its cut is drawn. */
enum CutKind {
  /** Somewhere in a face, the bit's tip in the wood. */
  GROOVE,
  /** Along an edge, part of its thickness. */
  EDGE,
  /** Along an edge, all of its thickness. */
  WHOLE_EDGE,
  /** Along an edge, flush with a template. */
  TRIM,
  /** Over a whole face, in passes that overlap. */
  SURFACE
}
