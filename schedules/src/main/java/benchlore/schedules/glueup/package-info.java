/**
 * Glueing up: how much adhesive, whether the assembly closes in time, which clamps where, and when
 * to unclamp, machine and load.
 *
 * <p>Enter at {@link benchlore.schedules.glueup.GlueUp#plan}. May depend on {@code answer}, {@code
 * numeric} and {@code room}.
 */
package benchlore.schedules.glueup;
