/**
 * Requests and answers of the engine as JSON, one form for the command line, the pages' data and
 * the browser: an object's keys are the components of the engine's record, in SI units.
 *
 * <p>Enter at {@link benchlore.schedules.exchange.EngineJson}. May depend on {@code air}, {@code
 * answer}, {@code coating}, {@code compatibility}, {@code cutting}, {@code glueup}, {@code
 * material}, {@code movement}, {@code present}, {@code project}, {@code quantity}, {@code room},
 * {@code sanding} and {@code time}. Immutable but for what is being written.
 */
package benchlore.schedules.exchange;
