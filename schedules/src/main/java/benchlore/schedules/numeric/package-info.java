/**
 * The only place for exp, log, pow, sqrt, rounding and number text, so that the JVM and a browser
 * print the same digits.
 *
 * <p>Enter at {@link benchlore.schedules.numeric.Numeric}. Depends on the JDK alone; stateless.
 */
package benchlore.schedules.numeric;
