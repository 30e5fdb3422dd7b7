/**
 * Router and CNC cutting: speed, feed, passes, direction, tabs, surfacing and reach.
 *
 * <p>Enter at {@link benchlore.schedules.cutting.Cutting}. May depend on {@code answer} and {@code
 * numeric}. Immutable.
 */
package benchlore.schedules.cutting;
