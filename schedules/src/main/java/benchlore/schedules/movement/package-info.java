/**
 * How wood takes up water and moves with it, and the room a finished part needs to fit.
 *
 * <p>Enter at {@link benchlore.schedules.movement.Fit}. May depend on {@code answer}, {@code
 * caution}, {@code material} and {@code quantity}. All types are immutable values, safe to share
 * between threads.
 */
package benchlore.schedules.movement;
