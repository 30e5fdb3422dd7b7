/**
 * The coating schedule: how each coat dries in this room, what it takes, what may go over what.
 *
 * <p>Enter at {@link benchlore.schedules.coating.Coating}; {{@link benchlore.schedules.coating.code
 * SheenRoute} and {{@link benchlore.schedules.coating.code Compatibility} answer their own
 * questions. May depend on {@code answer}, {@code caution}, {@code material}, {@code quantity},
 * {@code room} and {@code time}. All types are immutable values, safe to share between threads.
 */
package benchlore.schedules.coating;
