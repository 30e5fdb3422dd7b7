/**
 * Requests and answers of the engine as JSON, one form for the command line, the pages' data and
 * the browser: an object's keys are the components of the engine's record, in SI units.
 *
 * <p>Enter at {@link benchlore.generator.json.EngineJson}. Depends on the engine alone and is held
 * to the engine's rules, since it is compiled to JavaScript; immutable but for what is being
 * written.
 */
package benchlore.generator.json;
