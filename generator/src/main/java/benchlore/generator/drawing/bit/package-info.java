/**
 * Draws router bits, the cuts they leave and the edges they make, from a bit's measures.
 *
 * <p>Enter at {@link benchlore.generator.drawing.bit.Bits} with a {@link
 * benchlore.generator.drawing.bit.BitGeometry}. May depend on {@code drawing.svg} and {@code
 * drawing.surface}. It knows no file and no record. Immutable values, pure functions.
 */
package benchlore.generator.drawing.bit;
