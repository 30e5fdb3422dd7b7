/**
 * Wall-clock time: dates, moments and intervals, the hours someone is in the shop, and what is
 * booked in them.
 *
 * <p>Enter at {@link benchlore.schedules.time.Moment} and {@link
 * benchlore.schedules.time.ShopWeek}. Depends on {@code numeric} alone, not on the JDK's time
 * classes; immutable but for {@link benchlore.schedules.time.Bookings}.
 */
package benchlore.schedules.time;
