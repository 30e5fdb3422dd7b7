/**
 * Plans for other readers than a browser: text for a terminal, JSON for programs.
 *
 * <p>Enter at {@link benchlore.generator.export.PlanText} and {@link
 * benchlore.generator.export.PlanJson}. May depend on {@code planning}, {@code units} and JSON.
 */
package benchlore.generator.export;
