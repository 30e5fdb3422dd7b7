/**
 * The coating schedule: how each coat dries in this room, what it takes.
 *
 * <p>Enter at {@link benchlore.schedules.coating.Coating}; {@link
 * benchlore.schedules.coating.SheenRoute} answers its own question. May depend on {@code answer},
 * {@code caution}, {@code material}, {@code quantity}, {@code room} and {@code time}. All types are
 * immutable values, safe to share between threads.
 */
package benchlore.schedules.coating;
