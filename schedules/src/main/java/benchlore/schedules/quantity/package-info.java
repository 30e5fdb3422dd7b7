/**
 * Numbers as the engine keeps them: in SI units, with where they come from; and the only place for
 * exp, log, pow, sqrt, rounding and number text, so that the JVM and a browser print the same
 * digits.
 *
 * <p>Enter at {@link benchlore.schedules.quantity.Quantity}, {@link
 * benchlore.schedules.quantity.SourcedRange} or {@link benchlore.schedules.quantity.Numeric}.
 * Depends on the JDK alone. All types are immutable values, safe to share between threads.
 */
package benchlore.schedules.quantity;
