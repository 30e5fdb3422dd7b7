/**
 * From records and plan files to the engine's requests and its answers.
 *
 * <p>Enter at {@link benchlore.generator.planning.Plans}; {@link
 * benchlore.generator.planning.EngineData} gives single records as the engine sees them. May depend
 * on {@code library} and the engine.
 */
package benchlore.generator.planning;
