/**
 * Glueing up: how much adhesive, whether the assembly closes in time, which clamps where, and when
 * to unclamp, machine and load.
 *
 * <p>Enter at {@link benchlore.schedules.glueup.GlueUp}. May depend on {@code answer}, {@code
 * caution}, {@code material}, {@code quantity}, {@code room} and {@code time}. All types are
 * immutable values, safe to share between threads.
 */
package benchlore.schedules.glueup;
