/**
 * Sanding: which grades, in which order, for how long, from the cut surface to the finish and out
 * again to the rubbed sheen.
 *
 * <p>Enter at {@link benchlore.schedules.sanding.Sanding}; {@link
 * benchlore.schedules.sanding.Grits}, {@link benchlore.schedules.sanding.ShelfGap}, {@link
 * benchlore.schedules.sanding.MachineOrSand} and {@link benchlore.schedules.sanding.RubOut} answer
 * the questions beside it. May depend on {@code answer}, {@code caution}, {@code material} and
 * {@code quantity}. All types are immutable values, safe to share between threads.
 */
package benchlore.schedules.sanding;
