/**
 * What is worked with, each thing described once: finishes, adhesives, solvents, woods, and the
 * words of the trade that several rules use.
 *
 * <p>Enter at {@link benchlore.schedules.material.Finish}, {@link
 * benchlore.schedules.material.Adhesive}, {@link benchlore.schedules.material.Solvent} or {@link
 * benchlore.schedules.material.Species}; {@link benchlore.schedules.material.Transfer} says how
 * much of a finish lands on the work. Each says its fields once, in its {@link
 * benchlore.schedules.material.FieldTable}. May depend on {@code answer} and {@code quantity}. All
 * types are immutable values, safe to share between threads.
 */
package benchlore.schedules.material;
