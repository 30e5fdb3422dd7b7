/**
 * What goes with what: rows of conditions on two things, the strictest of which decides.
 *
 * <p>Enter at {@link benchlore.schedules.compatibility.Rules} for any pair, and at {@link
 * benchlore.schedules.compatibility.FinishOver} for one finish over another, which also says when
 * and with what between. May depend on {@code answer}, {@code caution}, {@code coating}, {@code
 * material}, {@code quantity} and {@code time}. All types are immutable values, safe to share
 * between threads.
 */
package benchlore.schedules.compatibility;
