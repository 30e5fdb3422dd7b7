/**
 * The coating schedule: how each coat dries in this room, what it takes, what may go over what.
 *
 * <p>Enter at {@link benchlore.schedules.coating.Coating}; {@code SheenRoute} and {@code
 * Compatibility} answer their own questions. May depend on {@code answer}, {@code calendar}, {@code
 * numeric}, {@code room} and {@code trade}. All types are immutable values, safe to share between
 * threads.
 */
package benchlore.schedules.coating;
