/**
 * When someone is in the shop, and when a piece of work fits into those hours.
 *
 * <p>Enter at {@link benchlore.schedules.calendar.ShopWeek}. Depends on the JDK alone; immutable.
 */
package benchlore.schedules.calendar;
