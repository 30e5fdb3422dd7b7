/**
 * The room the work stands in: temperature and humidity over the day, vapour pressure, dew point.
 *
 * <p>Enter at {@link benchlore.schedules.room.Climate}; {@link
 * benchlore.schedules.room.Psychrometry} holds the air formulas. May depend on {@code quantity} and
 * {@code time}. All types are immutable values, safe to share between threads.
 */
package benchlore.schedules.room;
