/**
 * Drawings computed from geometry, as SVG text: router bits, the cuts they leave, grain, grit,
 * clamps.
 *
 * <p>Enter at {@link benchlore.generator.drawing.Drawings} with a {@link
 * benchlore.generator.drawing.BitGeometry}. Depends on the JDK alone: knows no file and no record
 * of another package. Immutable values, pure functions, safe on any thread.
 */
package benchlore.generator.drawing;
