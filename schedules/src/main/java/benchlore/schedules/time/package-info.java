/**
 * Wall-clock time without zones: dates, moments, intervals, the hours someone is in the shop and
 * what is booked of them.
 *
 * <p>Enter at {@link benchlore.schedules.time.Moment} and {@link
 * benchlore.schedules.time.ShopWeek}. May depend on {@code quantity}. All types are immutable
 * values, safe to share between threads.
 */
package benchlore.schedules.time;
