/**
 * From records and plan files to the engine's requests and its answers.
 *
 * <p>Enter at {@link benchlore.generator.planning.Content}; {@link
 * benchlore.generator.planning.EngineData} and {@link benchlore.generator.planning.BitData} give
 * single records as the engine and the drawings see them. May depend on {@code compatibility},
 * {@code content}, {@code drawing.bit} and {@code picture}. Values are immutable.
 */
package benchlore.generator.planning;
