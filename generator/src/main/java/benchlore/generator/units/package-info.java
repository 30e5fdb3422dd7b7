/**
 * Shows the engine's SI numbers as people read them.
 *
 * <p>Enter at {@link benchlore.generator.units.Display}. May depend on the engine's answer types.
 */
package benchlore.generator.units;
