/**
 * Draws what a surface looks like: growth rings, abrasive grains, light in a film.
 *
 * <p>Enter at {@link benchlore.generator.drawing.surface.Surfaces}. May depend on {@code
 * drawing.svg}. It knows no file and no record. Immutable values, pure functions.
 */
package benchlore.generator.drawing.surface;
