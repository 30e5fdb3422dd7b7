/**
 * Loads the records in {@code content/} and checks them: every problem is a value with its place.
 *
 * <p>Enter at {@link benchlore.generator.library.LibraryLoader}. May depend on {@code schedules}
 * for the engine's data types, and on the YAML and JSON-Schema libraries. Results are immutable.
 */
package benchlore.generator.library;
