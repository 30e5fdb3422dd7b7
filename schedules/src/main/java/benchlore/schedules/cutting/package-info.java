/**
 * Router and CNC cutting: speed, feed, passes, direction, tabs, surfacing and reach.
 *
 * <p>Enter at {@link benchlore.schedules.cutting.Cutting}. May depend on {@code answer}, {@code
 * caution} and {@code quantity}. All types are immutable values, safe to share between threads.
 */
package benchlore.schedules.cutting;
