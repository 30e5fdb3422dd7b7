/**
 * How wood takes up water and moves with it, and the room a finished part needs to fit.
 *
 * <p>Enter at {@link benchlore.schedules.wood.Wood}; {@link benchlore.schedules.wood.WoodData} is
 * what a species record gives. May depend on {@code answer}, {@code numeric}, {@code room} and
 * {@code trade}. Immutable.
 */
package benchlore.schedules.wood;
