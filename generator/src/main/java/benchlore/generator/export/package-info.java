/**
 * Plans for other readers than a browser: text for a terminal, JSON for programs; and what a page
 * plans with.
 *
 * <p>Enter at {@link benchlore.generator.export.PlanText} and {@link
 * benchlore.generator.export.PlanJson}. May depend on {@code content}, {@code pagedata}, {@code
 * planning} and {@code units}. Stateless.
 */
package benchlore.generator.export;
