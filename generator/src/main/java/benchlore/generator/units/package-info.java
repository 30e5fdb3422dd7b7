/**
 * Shows the engine's SI numbers as people read them.
 *
 * <p>Enter at {@link benchlore.generator.units.Display}. Depends on the JDK alone. Stateless.
 */
package benchlore.generator.units;
