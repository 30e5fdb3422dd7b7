/**
 * Draws joints with their parts apart, from rules of thumb for their sizes.
 *
 * <p>Enter at {@link benchlore.generator.drawing.joint.JointDrawing}. May depend on {@code
 * drawing.svg} and {@code drawing.surface}. It knows no file and no record. Immutable values.
 */
package benchlore.generator.drawing.joint;
