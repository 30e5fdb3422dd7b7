/**
 * Loads the records in {@code content/} and checks them: every problem is a value with its place.
 *
 * <p>Enter at {@link benchlore.generator.content.LibraryLoader}. Depends on the JDK alone. Besides,
 * the engine's data types and the YAML and JSON-Schema libraries. Results are immutable.
 */
package benchlore.generator.content;
